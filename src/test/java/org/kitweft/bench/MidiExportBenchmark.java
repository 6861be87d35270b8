package org.kitweft.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.MidiFile;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Weaving 1,000 grooves of eight strokes and making MIDI files of them in memory, beside the JDK's
 * sequence and writer with the bare hits of the same grooves, woven already.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class MidiExportBenchmark {
    private static final int GROOVES = 1_000;

    private final Kit kit = BuiltInKits.load("five-piece");
    private final List<Recipe> recipes =
            new Random(1).ints(GROOVES).mapToObj(seed -> recipe(new Random(seed))).toList();
    private final List<Groove> woven = recipes.stream().map(Recipe::weave).toList();

    private Recipe recipe(Random random) {
        StringBuilder text = new StringBuilder();
        for (int stroke = 0; stroke < 8; stroke++) {
            text.append("RLK".charAt(random.nextInt(3)));
        }
        return Recipe.plain(Sticking.parse(text.toString()), kit);
    }

    /** Weaving and export. */
    @Benchmark
    public long weaveAndExport() {
        long bytes = 0;
        PlaySettings once = PlaySettings.DEFAULT.withLoops(1);
        for (Recipe recipe : recipes) {
            bytes += MidiFile.bytes(Timeline.of(Phrase.of(recipe.weave()), once)).length;
        }
        return bytes;
    }

    /** The rival: no weaving, no tempo, no names; notes only. */
    @Benchmark
    public long bareSequencesOfTheJdk() throws InvalidMidiDataException, IOException {
        long bytes = 0;
        for (Groove groove : woven) {
            Sequence sequence = new Sequence(Sequence.PPQ, 480);
            Track track = sequence.createTrack();
            for (Hit hit : groove.hits()) {
                Sound sound = kit.sound(hit.sound());
                long tick = hit.start() * 480 / Ticks.PER_QUARTER;
                track.add(event(ShortMessage.NOTE_ON, sound, hit.velocity(), tick));
                track.add(event(ShortMessage.NOTE_OFF, sound, 0, tick + 120));
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            MidiSystem.write(sequence, 1, out);
            bytes += out.size();
        }
        return bytes;
    }

    private static MidiEvent event(int command, Sound sound, int velocity, long tick)
            throws InvalidMidiDataException {
        return new MidiEvent(
                new ShortMessage(command, sound.channel() - 1, sound.key(), velocity), tick);
    }
}
