package org.kitweft.explore.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.pattern.Sticking;

class NoteReaderTest {
    private static final int DIVISION = 480;
    private final Kit kit = BuiltInKits.load("five-piece");

    @Test
    void readsTheNotesOfAGrooveBackSwungOrNot() {
        for (int swing : new int[] {50, 60, 67}) {
            Groove groove =
                    Recipe.plain(Sticking.parse(">RLR(L) K-H- RLRL B---"), kit)
                            .with(Grid.SIXTEENTHS.withSwing(swing))
                            .weave();
            NoteReader.Read read = NoteReader.read(notes(groove), DIVISION, kit, groove.grid());
            assertThat(read.target()).isEqualTo(Target.of(groove));
            assertThat(read.furthest()).isLessThan(0.01);
        }
    }

    @Test
    void laysALateNoteOnItsStepAndTellsHowLate() {
        List<NoteOn> notes = List.of(new NoteOn(0, 10, 38, 80), new NoteOn(150, 10, 42, 80));
        NoteReader.Read read = NoteReader.read(notes, DIVISION, kit, Grid.SIXTEENTHS);
        assertThat(read.target().steps().get(1))
                .containsExactly(Strike.plain(kit.find("hi-hat.closed")));
        assertThat(read.furthest()).isEqualTo(0.25);
    }

    @Test
    void aGraceNoteJustBeforeItsMainNoteBecomesOneStrike() {
        List<NoteOn> notes = List.of(new NoteOn(470, 10, 38, 48), new NoteOn(480, 10, 38, 115));
        NoteReader.Read read = NoteReader.read(notes, DIVISION, kit, Grid.SIXTEENTHS);
        assertThat(read.target().steps().stream().filter(step -> !step.isEmpty())).hasSize(1);
    }

    @Test
    void leavesOutAndNamesWhatTheKitDoesNotHave() {
        List<NoteOn> notes =
                List.of(
                        new NoteOn(960, 10, 81, 80),
                        new NoteOn(480, 10, 81, 80),
                        new NoteOn(0, 2, 38, 80),
                        new NoteOn(0, 10, 38, 80));
        NoteReader.Read read = NoteReader.read(notes, DIVISION, kit, Grid.SIXTEENTHS);
        assertThat(read.target().steps().get(0)).containsExactly(Strike.plain(kit.find("snare")));
        assertThat(read.target().steps().subList(1, 16)).allMatch(List::isEmpty);
        assertThat(NoteReader.words(read.leftOut()))
                .isEqualTo(
                        "key 38 on channel 2 (bar 1 step 1),"
                                + " key 81 on channel 10 (2 times, first in bar 1 step 5)");
    }

    @Test
    void namesTheStepsToWhichNotesWereDrawnFromAfar() {
        // A sixteenth has 120 ticks: 151 is 31 from step 2, 209 is 31 before step 3.
        List<NoteOn> notes =
                List.of(
                        new NoteOn(150, 10, 38, 80),
                        new NoteOn(151, 10, 42, 80),
                        new NoteOn(209, 10, 38, 80));
        NoteReader.Read read = NoteReader.read(notes, DIVISION, kit, Grid.SIXTEENTHS);
        assertThat(read.offTheGrid()).containsExactly(new Place(1, 2), new Place(1, 3));
    }

    @Test
    void refusesNotesOfWhichTheKitHasNone() {
        List<NoteOn> notes = List.of(new NoteOn(960, 10, 81, 80));
        assertThatThrownBy(() -> NoteReader.read(notes, DIVISION, kit, Grid.SIXTEENTHS))
                .hasMessage(
                        "kit \"five-piece\" has a sound for none of the notes:"
                                + " key 81 on channel 10 (bar 1 step 9)");
    }

    @Test
    void leavesOutEmptyBarsAtTheStartAndCountsFromTheFirstWithANote() {
        // Bars of four quarters: bar 3 begins at tick 3840; 5 ticks early is still its first step.
        List<NoteOn> notes = List.of(new NoteOn(3835, 10, 38, 80), new NoteOn(4320, 10, 81, 80));
        NoteReader.Read read = NoteReader.read(notes, DIVISION, kit, Grid.SIXTEENTHS);
        assertThat(read.emptyBars()).isEqualTo(2);
        assertThat(read.target().steps()).hasSize(16);
        assertThat(read.target().steps().get(0)).containsExactly(Strike.plain(kit.find("snare")));
        assertThat(NoteReader.words(read.leftOut()))
                .isEqualTo("key 81 on channel 10 (bar 1 step 5)");
    }

    @Test
    void refusesNumbersThatNoMidiFileHas() {
        assertThatThrownBy(() -> new NoteOn(0, 0, 38, 80))
                .hasMessage("channel 0: expected 1 to 16");
        assertThatThrownBy(() -> new NoteOn(-1, 1, 38, 80))
                .hasMessage("tick -1: expected 0 or more");
        assertThatThrownBy(
                        () ->
                                NoteReader.read(
                                        List.of(new NoteOn(9_000_000, 10, 38, 80)),
                                        1,
                                        kit,
                                        Grid.SIXTEENTHS))
                .hasMessage("note at tick 9000000: expected at most 512 bars");
        assertThatThrownBy(() -> NoteReader.read(List.of(), DIVISION, kit, Grid.SIXTEENTHS))
                .hasMessage("no notes: expected at least one");
    }

    private List<NoteOn> notes(Groove groove) {
        List<NoteOn> notes = new ArrayList<>();
        for (Hit hit : groove.hits()) {
            Sound sound = kit.sound(hit.sound());
            long tick = Math.round((double) hit.start() * DIVISION / Ticks.PER_QUARTER);
            notes.add(new NoteOn(tick, sound.channel(), sound.key(), hit.velocity()));
        }
        return notes;
    }
}
