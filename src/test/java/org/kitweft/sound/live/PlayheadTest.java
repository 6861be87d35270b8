package org.kitweft.sound.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.Limb;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.live.Playhead.Frames;
import org.kitweft.sound.live.Playhead.Sounding;
import org.kitweft.sound.synth.NoteStream;

class PlayheadTest {
    private static final PlaySettings ENDLESS = PlaySettings.DEFAULT.withTempo(new Tempo(97));
    private static final long START = 1000;
    private static final int PART = SoundThread.PART;

    private final List<Long> heard = new ArrayList<>();
    private final List<Integer> keys = new ArrayList<>();
    private final List<Long> lit = new ArrayList<>();

    private void advance(Playhead playhead, long to) {
        while (playhead.given() < to) {
            Frames frames = playhead.advance(Math.min(to, playhead.given() + PART));
            for (Sounding sounding : frames.notes()) {
                heard.add(sounding.frame());
                keys.add(sounding.note().key());
            }
            frames.cues().forEach(cue -> lit.add(cue.frame()));
        }
    }

    private static long seconds(double seconds) {
        return START + (long) (seconds * NoteStream.RATE);
    }

    private static double sixteenth(int tempo) {
        return 60.0 / tempo / 4 * NoteStream.RATE;
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({"RLRR LRLL, 97", "RLRRL, 131", "RL, 400", "RLR LRL, 20"})
    void loopsForMinutesWithoutAGapOrADrift(String sticking, int tempo) {
        Playhead playhead =
                new Playhead(
                        new Pass(Phrases.of(sticking), ENDLESS.withTempo(new Tempo(tempo))), START);
        advance(playhead, seconds(300));
        assertThat(lit).isNotEmpty();
        for (int i = 0; i < lit.size(); i++) {
            assertThat((double) lit.get(i)).isCloseTo(START + i * sixteenth(tempo), within(0.5001));
        }
    }

    @Test
    void endsAfterItsLoops() {
        Playhead playhead = new Playhead(new Pass(Phrases.of("RL"), ENDLESS.withLoops(3)), START);
        advance(playhead, seconds(60));
        assertThat(heard).hasSize(48);
        assertThat(playhead.endFrame()).isEqualTo(START + Math.round(48 * sixteenth(97)));
    }

    @Test
    void countInComesFirst() {
        Playhead playhead =
                new Playhead(
                        new Pass(Phrases.of("RL"), ENDLESS.withLoops(1).withCountInBars(1)), START);
        advance(playhead, seconds(60));
        assertThat(keys.subList(0, 5)).containsExactly(76, 77, 77, 77, 38);
        assertThat(heard.get(4)).isEqualTo(START + Math.round(16 * sixteenth(97)));
    }

    @Test
    void aGraceNoteSoundsBeforeEachLoopOnceTheFirstIncluded() {
        Playhead playhead =
                new Playhead(new Pass(Phrases.of("lR L R L"), ENDLESS.withLoops(2)), START);
        advance(playhead, seconds(60));
        assertThat(heard).hasSize(2 * (16 + 4)).isSorted().doesNotHaveDuplicates();
        assertThat(heard.get(0)).isEqualTo(START);
    }

    @Test
    void aNewTempoHoldsFromTheNextStepOn() {
        Pass slow = new Pass(Phrases.of("RL"), ENDLESS.withTempo(new Tempo(60)));
        Pass fast = new Pass(Phrases.of("RL"), ENDLESS.withTempo(new Tempo(120)));
        Playhead playhead = new Playhead(slow, START);
        advance(playhead, START + 100_000);
        playhead.change(fast);
        advance(playhead, START + 400_000);
        int turn = (int) Math.ceil(100_000 / sixteenth(60));
        for (int i = 0; i < heard.size(); i++) {
            double ideal =
                    i <= turn
                            ? i * sixteenth(60)
                            : turn * sixteenth(60) + (i - turn) * sixteenth(120);
            assertThat((double) heard.get(i)).isCloseTo(START + ideal, within(0.5001));
        }
    }

    @Test
    void swingTurnedUpBetweenTwoStepsStrikesNothingTwice() {
        for (int at = 0; at < 60_000; at += 97) {
            heard.clear();
            Playhead playhead = new Playhead(new Pass(Phrases.of("RL"), ENDLESS), START);
            advance(playhead, START + at);
            playhead.change(new Pass(Phrases.of("RL", Grid.SIXTEENTHS.withSwing(75)), ENDLESS));
            advance(playhead, START + Math.round(32 * sixteenth(97)) - 10);
            assertThat(heard).as("edit at %d", at).hasSize(32).isSorted();
        }
    }

    @Test
    void aSoundExchangedIsHeardAtTheNextStep() {
        Playhead playhead =
                new Playhead(new Pass(Phrase.of(Phrases.on("R", "R=snare")), ENDLESS), START);
        advance(playhead, START + Math.round(5.5 * sixteenth(97)));
        playhead.change(new Pass(Phrase.of(Phrases.on("R", "R=ride")), ENDLESS));
        advance(playhead, START + Math.round(8 * sixteenth(97)) - 10);
        assertThat(keys).containsExactly(38, 38, 38, 38, 38, 38, 51, 51);
    }

    @Test
    void manyEditsBetweenTwoStepsCountAsTheLast() {
        Playhead playhead =
                new Playhead(new Pass(Phrase.of(Phrases.on("R", "R=snare")), ENDLESS), START);
        advance(playhead, START + Math.round(5.5 * sixteenth(97)));
        for (int tempo = 98; tempo < 140; tempo++) {
            playhead.change(new Pass(Phrases.of("R"), ENDLESS.withTempo(new Tempo(tempo))));
        }
        playhead.change(
                new Pass(Phrase.of(Phrases.on("R", "R=ride")), ENDLESS.withTempo(new Tempo(194))));
        advance(playhead, START + Math.round(7.1 * sixteenth(97)));
        assertThat(keys).containsExactly(38, 38, 38, 38, 38, 38, 51, 51, 51);
        assertThat(heard.get(7) - heard.get(6)).isBetween(3409L, 3411L);
    }

    @Test
    void aLongerPhraseGoesOnAtItsOwnSecondBar() {
        Playhead playhead = new Playhead(new Pass(Phrases.of("R"), ENDLESS), START);
        advance(playhead, START + Math.round(20 * sixteenth(97)));
        Phrase two = Phrases.then(Phrases.on("R", "R=snare"), Phrases.on("R", "R=floor-tom"));
        playhead.change(new Pass(two, ENDLESS));
        keys.clear();
        advance(playhead, START + Math.round(64 * sixteenth(97)) - 10);
        // Now in the second loop of a one-bar phrase: that is the second loop of the two-bar one.
        assertThat(keys.subList(0, 11)).containsOnly(38);
        assertThat(keys.subList(12, 27)).containsOnly(43);
    }

    static List<Integer> seeds() {
        return new Random(2).ints(40).boxed().toList();
    }

    /** Whatever is edited whenever, cues follow the beat: every step lights once, in time. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noEditLosesOrRepeatsAStep(int seed) {
        Random random = new Random(seed);
        PlaySettings settings = ENDLESS;
        Playhead playhead = new Playhead(new Pass(Phrases.of("RLRR LRLL"), settings), START);
        for (int edit = 0; edit < 60; edit++) {
            advance(playhead, playhead.given() + random.nextInt(9000));
            Phrase phrase =
                    Phrases.of(
                            random.nextBoolean() ? "lRLRR LRLz L" : "RLLR >RLLR",
                            Grid.SIXTEENTHS
                                    .withSwing(50 + random.nextInt(26))
                                    .withOverTheBar(random.nextBoolean()));
            settings =
                    settings.withMuted(random.nextBoolean() ? Set.of() : Set.of(Limb.LEFT_HAND))
                            .withClick(random.nextBoolean());
            playhead.change(new Pass(phrase, settings));
        }
        advance(playhead, playhead.given() + 30_000);
        assertThat(lit).isSorted().doesNotHaveDuplicates();
        int step = 0;
        for (long frame : lit) {
            // Swung steps lie up to half a step late, never early.
            double late = (frame - START) / sixteenth(97) - step - firstStep();
            assertThat(late).as("step %d", step).isBetween(-0.001, 0.501);
            step++;
        }
    }

    /** The early grace note makes no difference here: the first phrase has none. */
    private static double firstStep() {
        return 0;
    }

    @Test
    void anotherMeterGoesOnWithoutAGap() {
        Playhead playhead = new Playhead(new Pass(Phrases.of("RL"), ENDLESS), START);
        advance(playhead, START + 123_456);
        playhead.change(
                new Pass(Phrases.of("RLR", Grid.SIXTEENTHS.withMeter(new Meter(3, 4))), ENDLESS));
        advance(playhead, seconds(30));
        for (int i = 0; i < lit.size(); i++) {
            assertThat((double) lit.get(i)).isCloseTo(START + i * sixteenth(97), within(0.5001));
        }
    }
}
