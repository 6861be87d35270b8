package org.kitweft.sound.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.sound.Course;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Stretch;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.live.Playhead.Lit;
import org.kitweft.sound.live.Playhead.Sounding;
import org.kitweft.sound.synth.NoteStream;

/** Tempo steps, trainer, drop-outs, cut bars, half and double time: live as in a file. */
class CourseTest {
    private static final PlaySettings SETTINGS =
            PlaySettings.DEFAULT.withTempo(new Tempo(97)).withLoops(3).withClick(true);
    private static final Course RISING =
            new Course.Practised(new Practice(new Tempo(60), 7, 2, new Tempo(90), false));
    private static final long START = 1000;

    private final List<Sounding> heard = new ArrayList<>();
    private final List<Lit> lit = new ArrayList<>();

    private void advance(Playhead playhead, long to) {
        while (playhead.given() < to) {
            Playhead.Frames frames =
                    playhead.advance(Math.min(to, playhead.given() + SoundThread.PART));
            heard.addAll(frames.notes());
            lit.addAll(frames.cues());
        }
    }

    static List<PlaySettings> courses() {
        return List.of(
                SETTINGS.withLoops(9).withCourse(RISING),
                SETTINGS.withCourse(new Course.Stepped(TempoSteps.parse("61, 144, 37"), 3, false)),
                SETTINGS.withLoops(6)
                        .withCourse(
                                new Course.Practised(
                                        new Practice(new Tempo(80), 3, 1, new Tempo(200), true))),
                SETTINGS.withStretch(new Stretch(2, 3, Feel.HALF_TIME)).withCountInBars(1),
                SETTINGS.withStretch(Stretch.WHOLE.with(Feel.DOUBLE_TIME)).withCourse(RISING));
    }

    @ParameterizedTest
    @MethodSource("courses")
    void soundsLiveOnTheFramesOfTheFile(PlaySettings settings) {
        // Flams and a buzz: their spacing differs from tempo to tempo, and the first note of each
        // loop is a grace note before the seam.
        Phrase phrase = Phrases.of("lR L Rz L rL R", 4);
        Timeline file = Timeline.of(phrase, settings);
        double start = file.tempo().seconds(file.firstTick());
        Playhead playhead = new Playhead(new Pass(phrase, settings), START);
        advance(playhead, START + 300L * NoteStream.RATE);
        assertThat(heard).hasSameSizeAs(file.notes());
        for (int i = 0; i < heard.size(); i++) {
            double ideal =
                    (file.tempo().seconds(file.notes().get(i).tick()) - start) * NoteStream.RATE;
            assertThat((double) heard.get(i).frame() - START)
                    .as("note %d of %d", i, heard.size())
                    .isCloseTo(ideal, within(0.5001));
        }
        double end = (file.tempo().seconds(file.to()) - start) * NoteStream.RATE;
        assertThat((double) playhead.endFrame() - START).isCloseTo(end, within(0.5001));
    }

    @Test
    void withoutEndTheLastTempoGoesOnWithoutADrift() {
        Phrase phrase = Phrases.of("RL");
        PlaySettings settings =
                PlaySettings.DEFAULT.withLoops(PlaySettings.ENDLESS).withCourse(RISING);
        Playhead playhead = new Playhead(new Pass(phrase, settings), START);
        advance(playhead, START + 600L * NoteStream.RATE);
        // 60 60 67 67 74 74 81 81 88 88, then 90: four beats each.
        double slow = 0;
        for (int tempo : new int[] {60, 67, 74, 81, 88}) {
            slow += 2 * 4 * 60.0 / tempo;
        }
        List<Long> after = lit.stream().filter(l -> l.loop() >= 10).map(Lit::frame).toList();
        assertThat(after).hasSizeGreaterThan(3000);
        for (int i = 0; i < after.size(); i++) {
            assertThat((double) after.get(i))
                    .isCloseTo(
                            START + (slow + i * 60.0 / 90 / 4) * NoteStream.RATE, within(0.5001));
        }
    }

    @Test
    void everyLoopIsToldWithItsTempoAndDropOutsStrikeNothing() {
        PlaySettings settings =
                SETTINGS.withLoops(4)
                        .withCourse(
                                new Course.Practised(
                                        new Practice(new Tempo(60), 5, 1, new Tempo(70), true)));
        Playhead playhead = new Playhead(new Pass(Phrases.of("RL"), settings), START);
        advance(playhead, START + 60L * NoteStream.RATE);
        assertThat(lit).hasSize(4 * 16);
        assertThat(lit.stream().map(l -> l.loop() + " " + l.how().tempo().beatsPerMinute()))
                .containsSubsequence("0 60", "1 65", "2 70", "3 70");
        assertThat(lit)
                .allMatch(l -> l.how().sounds() == (l.loop() % 2 == 0))
                .allMatch(l -> l.cue().hits().isEmpty() == (l.loop() % 2 == 1));
    }

    @Test
    void anotherCourseBeginsWithItsFirstLoopAtTheNextStep() {
        Phrase phrase = Phrases.of("RL");
        PlaySettings endless = PlaySettings.DEFAULT.withTempo(new Tempo(120));
        Playhead playhead = new Playhead(new Pass(phrase, endless), START);
        advance(playhead, START + 21L * NoteStream.RATE); // in the middle of loop 10
        playhead.change(new Pass(phrase, endless.withCourse(RISING)));
        lit.clear();
        advance(playhead, START + 40L * NoteStream.RATE);
        Lit first =
                lit.stream()
                        .filter(l -> l.how().tempo().beatsPerMinute() == 60)
                        .findFirst()
                        .orElseThrow();
        assertThat(first.loop()).isZero();
        assertThat(first.cue().place()).isEqualTo(new Place(1, 9));
        assertThat(lit.get(lit.size() - 1).loop()).isGreaterThan(2);
    }

    @Test
    void aStrokeTakenBackInTheTrainerKeepsItsLoop() {
        PlaySettings endless = PlaySettings.DEFAULT.withCourse(RISING);
        Playhead playhead = new Playhead(new Pass(Phrases.of("RL"), endless), START);
        advance(playhead, START + 20L * NoteStream.RATE);
        long loop = lit.get(lit.size() - 1).loop();
        playhead.change(new Pass(Phrases.of("RLL"), endless));
        advance(playhead, START + 21L * NoteStream.RATE);
        assertThat(lit.get(lit.size() - 1).loop()).isBetween(loop, loop + 1).isGreaterThan(3);
    }

    @Test
    void cutBarsKeepTheirNumbers() {
        PlaySettings settings = SETTINGS.withStretch(new Stretch(3, 4, Feel.AS_WRITTEN));
        Playhead playhead = new Playhead(new Pass(Phrases.of("RL", 4), settings), START);
        advance(playhead, START + 60L * NoteStream.RATE);
        assertThat(lit).hasSize(3 * 2 * 16);
        assertThat(lit.stream().map(l -> l.cue().place().bar()).distinct()).containsExactly(3, 4);
    }

    @Test
    void inDoubleTimeEachPlaceComesTwiceInHalfTimeOnce() {
        for (Feel feel : Feel.values()) {
            lit.clear();
            PlaySettings settings = SETTINGS.withLoops(1).withStretch(Stretch.WHOLE.with(feel));
            Playhead playhead = new Playhead(new Pass(Phrases.of("RL", 2), settings), START);
            advance(playhead, START + 60L * NoteStream.RATE);
            assertThat(lit).hasSize(feel.turns() * 2 * 16);
        }
    }
}
