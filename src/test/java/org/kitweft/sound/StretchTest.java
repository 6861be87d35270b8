package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.band.BandNote;
import org.kitweft.band.BandPart;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Ticks;

class StretchTest {
    private static final long BEAT = Ticks.PER_QUARTER;
    private static final long BAR = 4 * BEAT;
    private static final PlaySettings ONCE = PlaySettings.DEFAULT.withLoops(1).withClick(true);

    /** Two bars; the snare on every second and fourth beat, as in a backbeat. */
    private static final Phrase BACKBEAT = Phrases.of("----L-------L---", 2);

    private static final Playable WITH_BASS =
            new Playable(
                    BACKBEAT,
                    List.of(
                            new BandPart(
                                    "bass",
                                    2,
                                    33,
                                    List.of(
                                            new BandNote(0, BAR, 40, 90),
                                            new BandNote(BAR - BEAT, 2 * BEAT, 41, 90),
                                            new BandNote(BAR + BEAT, BEAT, 43, 90)))));

    private static List<Long> ticks(Timeline timeline, Part part) {
        return timeline.tracks().stream()
                .filter(track -> track.part() == part)
                .flatMap(track -> track.notes().stream())
                .map(Note::tick)
                .toList();
    }

    private static Timeline timeline(Feel feel) {
        return Timeline.of(WITH_BASS, ONCE.withStretch(Stretch.WHOLE.with(feel)));
    }

    @Test
    void inHalfTimeTheBackbeatFallsOnThreeWhileClickAndBassStay() {
        Timeline half = timeline(Feel.HALF_TIME);
        assertThat(half.to()).isEqualTo(4 * BAR);
        // Common practice, no source: a half-time backbeat is the 3 of each bar.
        assertThat(ticks(half, Part.DRUMS))
                .containsExactly(2 * BEAT, BAR + 2 * BEAT, 2 * BAR + 2 * BEAT, 3 * BAR + 2 * BEAT);
        assertThat(ticks(half, Part.CLICK)).hasSize(16);
        assertThat(ticks(half, Part.BASS))
                .containsExactly(
                        0L, 3 * BEAT, 5 * BEAT, 2 * BAR, 2 * BAR + 3 * BEAT, 2 * BAR + 5 * BEAT);
    }

    @Test
    void inDoubleTimeTheBackbeatFallsOnEveryAnd() {
        Timeline twice = timeline(Feel.DOUBLE_TIME);
        assertThat(twice.to()).isEqualTo(2 * BAR);
        assertThat(ticks(twice, Part.DRUMS)).hasSize(8).allMatch(tick -> tick % BEAT == BEAT / 2);
        assertThat(ticks(twice, Part.CLICK)).hasSize(8);
        assertThat(ticks(twice, Part.BASS)).hasSize(3);
    }

    @Test
    void halfOfDoubleIsAsWritten() {
        for (long tick = 0; tick < BAR; tick += 7) {
            assertThat(Feel.DOUBLE_TIME.scaled(Feel.HALF_TIME.scaled(tick))).isEqualTo(tick);
        }
    }

    @Test
    void barsAreCutWithTheirBandAndShortenedAtTheEnd() {
        Playable first = WITH_BASS.bars(1, 1);
        assertThat(first.band().get(0).notes()).extracting(BandNote::end).containsExactly(BAR, BAR);
        Timeline second =
                Timeline.of(WITH_BASS, ONCE.withStretch(new Stretch(2, 9, Feel.AS_WRITTEN)));
        assertThat(second.to()).isEqualTo(BAR);
        assertThat(ticks(second, Part.BASS)).containsExactly(BEAT);
        assertThat(ticks(second, Part.DRUMS)).containsExactly(BEAT, 3 * BEAT);
    }

    @Test
    void barsThatThePhraseDoesNotHaveLeaveItWhole() {
        Timeline whole =
                Timeline.of(WITH_BASS, ONCE.withStretch(new Stretch(3, 4, Feel.AS_WRITTEN)));
        assertThat(whole).isEqualTo(Timeline.of(WITH_BASS, ONCE));
    }

    @Test
    void barsInTheWrongOrderAreRefused() {
        assertThatThrownBy(() -> new Stretch(4, 3, Feel.AS_WRITTEN))
                .hasMessage("bars 4 to 3: expected 1 or more, the last not before the first");
    }
}
