package org.kitweft.sound.midi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Note;
import org.kitweft.sound.Part;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.OtherReader.Meta;
import org.kitweft.sound.midi.OtherReader.ReadNote;

class MidiFileTest {
    /** Drums and click, which share a channel, equally loud: then velocities stay as they are. */
    private static final PlaySettings ONCE =
            PlaySettings.DEFAULT
                    .withLoops(1)
                    .withMix(Mix.DEFAULT.with(Part.CLICK, Mix.DEFAULT.strip(Part.DRUMS)));

    private static final int TRACK_NAME = 0x03;
    private static final int MARKER = 0x06;
    private static final int TEMPO = 0x51;
    private static final int TIME_SIGNATURE = 0x58;

    @TempDir Path folder;

    /** Seeded, so that every run checks the same: stickings on all grids, kits and settings. */
    static List<Timeline> timelines() {
        Random random = new Random(20261125);
        return random.ints(60).mapToObj(MidiFileTest::timeline).toList();
    }

    private static Timeline timeline(int seed) {
        Random random = new Random(seed);
        String strokes = "RLRLKBH-";
        StringBuilder sticking = new StringBuilder("R");
        for (int i = random.nextInt(11); i > 0; i--) {
            char letter = strokes.charAt(random.nextInt(strokes.length()));
            boolean hand = letter == 'R' || letter == 'L';
            String stroke = hand && random.nextInt(4) == 0 ? letter + "z" : "" + letter;
            stroke = hand && random.nextInt(4) == 0 ? (letter == 'R' ? "l" : "r") + letter : stroke;
            sticking.append(' ').append(stroke);
        }
        List<Integer> steps = List.copyOf(Grid.stepsPerBeatChoices());
        List<String> meters = List.of("4/4", "3/4", "5/4", "6/8", "7/8", "12/8");
        Grid grid =
                new Grid(
                        Meter.parse(meters.get(random.nextInt(meters.size()))),
                        steps.get(random.nextInt(steps.size())),
                        50 + random.nextInt(26),
                        random.nextBoolean());
        String kit = BuiltInKits.names().get(random.nextInt(BuiltInKits.names().size()));
        Recipe recipe =
                Recipe.plain(Sticking.parse(sticking.toString()), BuiltInKits.load(kit)).with(grid);
        return Timeline.of(
                Phrase.of(recipe.weave()),
                ONCE.withLoops(1 + random.nextInt(3))
                        .withCountInBars(random.nextInt(3))
                        .withClick(random.nextBoolean())
                        .withTempo(new Tempo(40 + random.nextInt(200))));
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void anotherReaderFindsTheSameNotesAtTheSameTicks(Timeline timeline) {
        OtherReader read = new OtherReader(MidiFile.bytes(timeline));
        assertThat(read.format).isEqualTo(1);
        assertThat(read.perQuarter).isLessThanOrEqualTo(32_767).matches(r -> r % 480 == 0);
        int perQuarter = read.perQuarter;
        long start = startOf(timeline);
        Comparator<ReadNote> order =
                Comparator.comparingInt(ReadNote::track)
                        .thenComparingLong(ReadNote::on)
                        .thenComparingInt(ReadNote::channel)
                        .thenComparingInt(ReadNote::key);
        List<ReadNote> expected =
                IntStream.range(0, timeline.tracks().size())
                        .boxed()
                        .flatMap(
                                track ->
                                        timeline.tracks().get(track).notes().stream()
                                                .map(
                                                        note ->
                                                                asRead(
                                                                        track + 1,
                                                                        note,
                                                                        start,
                                                                        perQuarter)))
                        .sorted(order)
                        .toList();
        assertThat(read.notes.stream().sorted(order)).containsExactlyElementsOf(expected);
    }

    private static ReadNote asRead(int track, Note note, long start, int perQuarter) {
        return new ReadNote(
                track,
                note.channel(),
                note.program().orElse(-1),
                note.key(),
                note.velocity(),
                exactly(note.tick() - start, perQuarter),
                exactly(note.end() - start, perQuarter));
    }

    /** Fails where a tick of ours is no whole tick of the file. */
    private static long exactly(long tick, int perQuarter) {
        assertThat(tick * perQuarter % Ticks.PER_QUARTER).isZero();
        return tick * perQuarter / Ticks.PER_QUARTER;
    }

    private static long startOf(Timeline timeline) {
        long bar = timeline.tempo().paces().get(0).meter().barTicks();
        return timeline.firstTick() < timeline.from() ? timeline.from() - bar : timeline.from();
    }

    @ParameterizedTest(name = "{0} steps, swing {1}: {2}")
    @CsvSource({
        "4, 50, 480",
        "5, 50, 480",
        "7, 50, 3360",
        "12, 50, 480",
        "8, 50, 480",
        "4, 66, 2400",
        "2, 57, 2400"
    })
    void theResolutionIsTheSmallestThatHoldsEveryOnset(int steps, int swing, int resolution) {
        Phrase phrase = Phrases.of("RLRLR", new Grid(new Meter(5, 4), steps, swing, false));
        OtherReader read = new OtherReader(MidiFile.bytes(Timeline.of(phrase, ONCE)));
        assertThat(read.perQuarter).isEqualTo(resolution);
    }

    // Microseconds of a quarter note: the tempo counts beats of the meter, design section 10.
    @ParameterizedTest(name = "{0} at {1}: {2}")
    @CsvSource({"4/4, 120, 500000", "6/8, 80, 500000", "7/8, 120, 1000000", "4/4, 97, 618557"})
    void tempoCountsBeatsOfTheMeter(String meter, int tempo, int microseconds) {
        Phrase phrase = Phrases.of("RL", Grid.SIXTEENTHS.withMeter(Meter.parse(meter)));
        OtherReader read =
                new OtherReader(
                        MidiFile.bytes(Timeline.of(phrase, ONCE.withTempo(new Tempo(tempo)))));
        List<Integer> bytes = read.metas(TEMPO).get(0).bytes();
        assertThat(bytes.get(0) << 16 | bytes.get(1) << 8 | bytes.get(2)).isEqualTo(microseconds);
    }

    // RP-001: numerator, power of two, MIDI clocks a metronome click, thirty-seconds a quarter.
    @ParameterizedTest(name = "{0}")
    @CsvSource({"4/4, 4 2 24 8", "6/8, 6 3 36 8", "7/8, 7 3 12 8", "3/4, 3 2 24 8"})
    void theMeterIsWritten(String meter, String bytes) {
        Phrase phrase = Phrases.of("RL", Grid.SIXTEENTHS.withMeter(Meter.parse(meter)));
        OtherReader read = new OtherReader(MidiFile.bytes(Timeline.of(phrase, ONCE)));
        assertThat(read.metas(TIME_SIGNATURE).get(0).bytes())
                .asString()
                .contains(bytes.replace(" ", ", "));
    }

    @Test
    void tracksAndPlacesAreNamed() {
        Timeline timeline =
                Timeline.of(
                        Phrases.of("RLRR LRLL"),
                        ONCE.withLoops(2).withClick(true).withCountInBars(1));
        OtherReader read = new OtherReader(MidiFile.bytes(timeline));
        assertThat(read.metas(TRACK_NAME)).extracting(Meta::text).containsExactly("drums", "click");
        assertThat(read.metas(MARKER))
                .extracting(Meta::text, Meta::tick)
                .containsExactly(
                        tuple("count-in", 0L), tuple("time 1/2", 1920L), tuple("time 2/2", 3840L));
    }

    @Test
    void aGraceNoteBeforeTheStartGetsABarOfItsOwn() {
        OtherReader read =
                new OtherReader(MidiFile.bytes(Timeline.of(Phrases.of("lR L R L"), ONCE)));
        assertThat(read.notes).extracting(ReadNote::on).contains(1920L).allMatch(on -> on > 1800);
        assertThat(read.metas(MARKER).get(0).tick()).isEqualTo(1920);
    }

    @Test
    void anExistingFileIsOnlyReplacedWhenAsked() throws IOException {
        Path target = Files.writeString(folder.resolve("groove.mid"), "mine");
        Timeline timeline = Timeline.of(Phrases.of("RL"), ONCE);
        assertThatThrownBy(() -> MidiFile.write(timeline, target, false))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(target).hasContent("mine");
        MidiFile.write(timeline, target, true);
        assertThat(Files.readAllBytes(target)).isEqualTo(MidiFile.bytes(timeline));
    }

    @Test
    void aTargetThatCannotBeWrittenIsNamed() {
        Path target = folder.resolve("no-such-folder/groove.mid");
        assertThatThrownBy(() -> MidiFile.write(Timeline.of(Phrases.of("RL"), ONCE), target, false))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(target.toString())
                .hasMessageContaining("there is no folder");
    }
}
