package org.kitweft.ui.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.explore.search.Answer;
import org.kitweft.explore.search.Target;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class OriginsTest {
    private static final int DIVISION = 96;

    @TempDir Path folder;
    private final SessionModel session = new SessionModel(Session.opening());
    private final Kit kit = session.recipe().kit();
    private final Origins origins = new Origins(session, Tasks.DIRECT);

    @Test
    void everyAnswerProducesTheGrooveInTheGridTheOriginalAmongThem() {
        origins.takeGrid(OptionalInt.empty());
        Target target = Target.of(session.groove());
        List<Answer> first = origins.found().orElseThrow().first(40);
        assertThat(first).hasSize(40);
        for (Answer answer : first) {
            assertThat(Target.of(answer.recipe().weave())).isEqualTo(target);
        }
        assertThat(origins.found().get().with(session.recipe().sticking())).isPresent();
        assertThat(origins.lines().get(0)).contains("ways to play the groove in the grid");
        assertThat(origins.isFault()).isFalse();
        assertThat(origins.part()).isEmpty();
    }

    /** Both of a sticking as long as a bar and of one that goes round in it. */
    @ParameterizedTest
    @ValueSource(ints = {8, 16})
    void theFigureShownRisesDownTheListWhileAdditionsAreAsMany(int strokes) {
        session.edit("accents", session.recipe().with(Sticking.parse(">R(L)RL RL>R-")));
        origins.takeGrid(OptionalInt.of(strokes));
        List<Finding> shown = new ArrayList<>();
        Iterator<Finding> all = OriginPane.findings(origins.found().orElseThrow(), new Outlook());
        for (int i = 0; i < 200 && all.hasNext(); i++) {
            shown.add(all.next());
        }
        assertThat(shown).extracting(Finding::thousandths).isSorted();
        assertThat(shown.get(0).thousandths())
                .isLessThan(shown.get(shown.size() - 1).thousandths());
    }

    @Test
    void aMidiFileOfTheGrooveHasTheSameOrigins() throws Exception {
        Path file = folder.resolve("groove.mid");
        MidiFile.write(Timeline.of(session.phrase(), PlaySettings.DEFAULT), file, false);
        origins.takeFile(file, OptionalInt.of(8));
        List<Answer> ofFile = origins.found().orElseThrow().first(5);
        origins.takeGrid(OptionalInt.of(8));
        assertThat(ofFile).isEqualTo(origins.found().orElseThrow().first(5));
    }

    @Test
    void clickAndCountInOfAFileOfOursAreNoPartOfTheGroove() throws Exception {
        Path file = folder.resolve("groove.mid");
        PlaySettings counted = PlaySettings.DEFAULT.withLoops(1).withCountInBars(1);
        MidiFile.write(Timeline.of(session.phrase(), counted), file, false);
        origins.takeFile(file, OptionalInt.of(8));
        assertThat(origins.lines().subList(1, origins.lines().size()))
                .containsExactly(
                        "Tracks not read: click.",
                        "The empty bar at the start is left out; bar 1 is the first with a note.");
        List<Answer> ofFile = origins.found().orElseThrow().first(5);
        origins.takeGrid(OptionalInt.of(8));
        assertThat(ofFile).isEqualTo(origins.found().orElseThrow().first(5));
    }

    @Test
    void aFileThatRepeatsIsSearchedForAsLongAsItsBars() throws Exception {
        Path file =
                midi(
                        notes -> {
                            for (int bar = 0; bar < 4; bar++) {
                                notes.accept(new int[] {bar * 4 * DIVISION, 9, 38, 80});
                            }
                        });
        origins.takeFile(file, OptionalInt.empty());
        Answer answer = origins.found().orElseThrow().first(1).get(0);
        assertThat(answer.recipe().sticking().size()).isEqualTo(16);
        assertThat(answer.recipe().bars()).hasValue(4);
    }

    /**
     * Keys from the General MIDI 1 percussion map: 38 snare, 81 open triangle, 42 closed hi-hat.
     */
    @Test
    void namesNotesThatNoSurfaceHasAndNotesOffTheGrid() throws Exception {
        Path file =
                midi(
                        notes -> {
                            notes.accept(new int[] {0, 9, 38, 80});
                            notes.accept(new int[] {DIVISION, 9, 81, 80});
                            notes.accept(new int[] {2 * DIVISION, 9, 81, 80});
                            notes.accept(new int[] {3 * DIVISION + 8, 9, 42, 80});
                            notes.accept(new int[] {0, 0, 60, 80});
                        });
        origins.takeFile(file, OptionalInt.empty());
        assertThat(origins.found()).isPresent();
        assertThat(origins.lines().subList(1, 3))
                .containsExactly(
                        "Left out, no surface of five-piece has them: key 60 on channel 1 (bar 1"
                                + " step 1), key 81 on channel 10 (2 times, first in bar 1 step 5).",
                        "Off the grid, drawn to the nearest step from up to 33 % of a step away:"
                                + " bar 1 step 13.");
    }

    @Test
    void saysWhichStepsForbidAGrooveAndWhy() {
        Recipe recipe = session.recipe();
        Layer open = new Layer(Limb.LEFT_HAND, kit.find("hi-hat.open"), 1, Figure.parse("x - - -"));
        Layer foot = new Layer(Limb.LEFT_FOOT, kit.find("hi-hat.foot"), 1, Figure.parse("x - - -"));
        session.edit("Layers", recipe.with(recipe.voicing().withLayers(List.of(open, foot))));
        origins.takeGrid(OptionalInt.empty());
        assertThat(origins.found()).isEmpty();
        assertThat(origins.isFault()).isTrue();
        assertThat(origins.lines().get(0))
                .isEqualTo(
                        "No sticking produces the groove in the grid; the hatched steps forbid it.");
        assertThat(origins.lines().get(1)).contains("cannot sound together: bar 1 step 1");
        assertThat(origins.forbidding().orElseThrow().places()).contains(new Place(1, 1));
        session.undo();
        origins.takeGrid(OptionalInt.empty());
        assertThat(origins.forbidding()).isEmpty();
    }

    /** General MIDI 1 percussion map: 42 closed, 46 open hi-hat. */
    @Test
    void theStepsOfAFileAreNoneOfTheGrids() throws Exception {
        Path file =
                midi(
                        notes -> {
                            notes.accept(new int[] {0, 9, 42, 80});
                            notes.accept(new int[] {0, 9, 46, 80});
                        });
        origins.takeFile(file, OptionalInt.empty());
        assertThat(origins.lines().get(1)).contains("cannot sound together");
        assertThat(origins.forbidding()).isEmpty();
    }

    @Test
    void aGrooveEditedDuringItsSearchIsNotTheOneThatWasSearched() {
        Recipe recipe = session.recipe();
        Layer open = new Layer(Limb.LEFT_HAND, kit.find("hi-hat.open"), 1, Figure.parse("x - - -"));
        Layer foot = new Layer(Limb.LEFT_FOOT, kit.find("hi-hat.foot"), 1, Figure.parse("x - - -"));
        session.edit("Layers", recipe.with(recipe.voicing().withLayers(List.of(open, foot))));
        origins.addListener(
                () -> {
                    if (origins.part().isPresent()) {
                        session.undo();
                    }
                });
        origins.takeGrid(OptionalInt.empty());
        assertThat(origins.isFault()).isTrue();
        assertThat(origins.forbidding()).isEmpty();
    }

    @Test
    void aGrooveBetweenTheStepsIsRefusedWithItsPlace() {
        Recipe recipe = session.recipe();
        Layer triplets =
                new Layer(Limb.LEFT_FOOT, kit.find("hi-hat.foot"), 3, Figure.parse("x x x"));
        session.edit("Layer", recipe.with(recipe.voicing().withLayers(List.of(triplets))));
        origins.takeGrid(OptionalInt.empty());
        assertThat(origins.isFault()).isTrue();
        assertThat(origins.lines().get(0)).contains("lies between the steps");
    }

    @Test
    void filesThatAreNoMidiFilesAreRefusedInOneLine() throws Exception {
        origins.takeFile(folder.resolve("none.mid"), OptionalInt.empty());
        assertThat(origins.lines().get(0)).endsWith("none.mid: there is no such file");
        Path text = Files.writeString(folder.resolve("text.mid"), "no MIDI at all");
        origins.takeFile(text, OptionalInt.empty());
        assertThat(origins.lines()).containsExactly("text.mid is no MIDI file");
        Path nothing = Files.write(folder.resolve("nothing.mid"), new byte[0]);
        origins.takeFile(nothing, OptionalInt.empty());
        assertThat(origins.lines()).containsExactly("nothing.mid is empty: expected a MIDI file");
        Path empty = midi(notes -> {});
        origins.takeFile(empty, OptionalInt.empty());
        assertThat(origins.lines()).containsExactly("song.mid has no notes");
    }

    @Test
    void aMidiFileCutShortAnywhereIsRefusedByName() throws Exception {
        Path whole = folder.resolve("whole.mid");
        MidiFile.write(Timeline.of(session.phrase(), PlaySettings.DEFAULT), whole, false);
        byte[] bytes = Files.readAllBytes(whole);
        Files.write(folder.resolve("cut.mid"), Arrays.copyOf(bytes, 40));
        origins.takeFile(folder.resolve("cut.mid"), OptionalInt.of(8));
        assertThat(origins.lines())
                .containsExactly("cut.mid is cut short: expected more after its 40 bytes");
        for (int length = 0; length < bytes.length; length += 7) {
            ByteArrayOutputStream part = new ByteArrayOutputStream();
            part.write(bytes, 0, length);
            Path cut = Files.write(folder.resolve("cut.mid"), part.toByteArray());
            origins.takeFile(cut, OptionalInt.of(8));
            assertThat(origins.lines()).as("cut after %d bytes", length).isNotEmpty();
            assertThat(origins.lines().get(0)).startsWith("cut.mid ").doesNotContain("Exception");
            assertThat(origins.isFault()).isTrue();
        }
    }

    @Test
    void damageInsideAMidiFileIsReadOrRefusedByName() throws Exception {
        Path whole = folder.resolve("whole.mid");
        MidiFile.write(Timeline.of(session.phrase(), PlaySettings.DEFAULT), whole, false);
        byte[] bytes = Files.readAllBytes(whole);
        for (int at = 4; at < bytes.length; at += 11) {
            byte[] damaged = bytes.clone();
            damaged[at] ^= (byte) 0xFF;
            Path file = Files.write(folder.resolve("hurt.mid"), damaged);
            origins.takeFile(file, OptionalInt.of(8));
            assertThat(origins.lines()).as("byte %d", at).isNotEmpty();
            assertThat(origins.lines().get(0)).doesNotContain("Exception").isNotBlank();
        }
    }

    @Test
    void rowsAreMadeInPortionsAsOneGoesOn() {
        origins.takeGrid(OptionalInt.empty());
        List<String> faults = new ArrayList<>();
        FindingRows rows = FindingRowsTest.rows(faults);
        rows.show(watch -> OriginPane.findings(origins.found().orElseThrow(), watch));
        assertThat(rows.getRowCount()).isEqualTo(FindingRows.PORTION);
        rows.seen(10);
        assertThat(rows.getRowCount()).isEqualTo(FindingRows.PORTION);
        rows.seen(45);
        assertThat(rows.getRowCount()).isEqualTo(2 * FindingRows.PORTION);
        assertThat(rows.at(70).lead()).isEqualTo("71");
        assertThat(faults).isEmpty();
    }

    private Path midi(Consumer<Consumer<int[]>> notes) throws Exception {
        Sequence sequence = new Sequence(Sequence.PPQ, DIVISION);
        var track = sequence.createTrack();
        List<int[]> all = new ArrayList<>();
        notes.accept(all::add);
        for (int[] note : all) {
            track.add(
                    new MidiEvent(
                            new ShortMessage(ShortMessage.NOTE_ON, note[1], note[2], note[3]),
                            note[0]));
            track.add(
                    new MidiEvent(
                            new ShortMessage(ShortMessage.NOTE_ON, note[1], note[2], 0),
                            note[0] + 10));
        }
        Path file = folder.resolve("song.mid");
        MidiSystem.write(sequence, 1, file.toFile());
        return file;
    }
}
