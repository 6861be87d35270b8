package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.band.Arrangement;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.ChordChart;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Sticking;

class TimelineTest {
    private static final PlaySettings ONCE =
            PlaySettings.DEFAULT.withLoops(1).withTempo(new Tempo(90));
    private static final long SIXTEENTH = Ticks.PER_QUARTER / 4;
    private static final long BAR = 4L * Ticks.PER_QUARTER;

    // General MIDI 1 percussion map (shared/reference/gm1-percussion.csv).
    private static final int ACOUSTIC_SNARE = 38;
    private static final int CLOSED_HI_HAT = 42;
    private static final int PEDAL_HI_HAT = 44;
    private static final int OPEN_HI_HAT = 46;
    private static final int HIGH_WOOD_BLOCK = 76;
    private static final int LOW_WOOD_BLOCK = 77;

    private static List<Note> drums(Timeline timeline) {
        return track(timeline, Part.DRUMS.id());
    }

    private static List<Note> track(Timeline timeline, String name) {
        return timeline.tracks().stream()
                .filter(track -> track.name().equals(name))
                .flatMap(track -> track.notes().stream())
                .toList();
    }

    @Test
    void everyHitIsANoteAtItsTick() {
        Phrase phrase = Phrases.of("RLRR (L)>RLL");
        Timeline timeline = Timeline.of(phrase, ONCE);
        List<Hit> hits = phrase.sections().get(0).groove().hits();
        assertThat(drums(timeline))
                .extracting(Note::tick)
                .containsExactlyElementsOf(hits.stream().map(Hit::start).toList());
        assertThat(drums(timeline))
                .extracting(Note::velocity)
                .containsExactlyElementsOf(hits.stream().map(Hit::velocity).toList());
        assertThat(drums(timeline)).allMatch(note -> note.key() == ACOUSTIC_SNARE);
        assertThat(timeline.to()).isEqualTo(BAR);
    }

    @Test
    void loopsFollowEachOtherWithoutAGap() {
        Timeline timeline = Timeline.of(Phrases.of("RLRR LRLL"), ONCE.withLoops(3));
        assertThat(drums(timeline))
                .extracting(Note::tick)
                .containsExactlyElementsOf(
                        LongStream.range(0, 48).mapToObj(step -> step * SIXTEENTH).toList());
        assertThat(timeline.markers())
                .containsExactly(
                        new Marker(0, "time 1/3"),
                        new Marker(BAR, "time 2/3"),
                        new Marker(2 * BAR, "time 3/3"));
    }

    @Test
    void countInLiesBeforeThePhraseAndIsAccentedOnBeatOne() {
        Timeline timeline = Timeline.of(Phrases.of("RLRR LRLL"), ONCE.withCountInBars(1));
        assertThat(timeline.from()).isEqualTo(-BAR);
        assertThat(track(timeline, Part.CLICK.id()))
                .extracting(Note::tick, Note::key)
                .containsExactly(
                        tuple(-BAR, HIGH_WOOD_BLOCK),
                        tuple(-BAR * 3 / 4, LOW_WOOD_BLOCK),
                        tuple(-BAR / 2, LOW_WOOD_BLOCK),
                        tuple(-BAR / 4, LOW_WOOD_BLOCK));
        assertThat(drums(timeline)).allMatch(note -> note.tick() >= 0);
    }

    @ParameterizedTest(name = "{0}: {1} clicks a bar")
    @CsvSource({"4/4, 4", "3/4, 3", "6/8, 2", "12/8, 4", "7/8, 7"})
    void clickFollowsTheBeatsOfTheMeter(String meter, int beats) {
        Phrase phrase = Phrases.of("RL", Grid.SIXTEENTHS.withMeter(Meter.parse(meter)));
        Timeline timeline = Timeline.of(phrase, ONCE.withClick(true));
        assertThat(track(timeline, Part.CLICK.id())).hasSize(beats * phrase.bars());
    }

    @Test
    void clickTakesOtherKeysBesideAWoodBlockInTheKit() {
        Phrase phrase =
                Phrase.of(Recipe.plain(Sticking.parse("RL"), BuiltInKits.load("extended")).weave());
        // General MIDI 2 (RP-024): 33 metronome click, 34 metronome bell.
        assertThat(track(Timeline.of(phrase, ONCE.withClick(true)), Part.CLICK.id()))
                .extracting(Note::key)
                .containsExactly(34, 33, 33, 33);
    }

    @Test
    void mutedLimbsAndTheirGraceNotesAreSilent() {
        Phrase phrase = Phrases.of("- lR - L");
        assertThat(drums(Timeline.of(phrase, ONCE.withMuted(Set.of(Limb.LEFT_HAND)))))
                .extracting(Note::tick)
                .containsExactly(SIXTEENTH, SIXTEENTH * 5, SIXTEENTH * 9, SIXTEENTH * 13);
        assertThat(drums(Timeline.of(phrase, ONCE.withSolo(Set.of(Limb.RIGHT_FOOT))))).isEmpty();
        assertThat(drums(Timeline.of(phrase, ONCE.withSolo(Set.of(Limb.LEFT_HAND))))).hasSize(8);
    }

    @ParameterizedTest(name = "{0} at {1}: first grace note {2} s before")
    @CsvSource(
            textBlock =
                    """
                    # 30 ms to the next note (common practice, no source), a quarter of a step at most
                    - lR - -,   90, 0.030
                    - llR - -,  90, 0.060
                    - lR - -,   60, 0.030
                    - lR - -,  250, 0.015
                    - llR - -, 250, 0.030
                    """)
    void graceNotesComeJustBefore(String sticking, int tempo, double seconds) {
        Timeline timeline = Timeline.of(Phrases.of(sticking), ONCE.withTempo(new Tempo(tempo)));
        Note grace = drums(timeline).get(0);
        double before =
                timeline.tempo().seconds(SIXTEENTH) - timeline.tempo().seconds(grace.tick());
        assertThat(before).isCloseTo(seconds, within(0.002));
        assertThat(grace.velocity()).isLessThan(80);
    }

    @Test
    void graceNoteOfTheVeryFirstHitLiesBeforeTheStart() {
        Timeline timeline = Timeline.of(Phrases.of("lR L R L"), ONCE.withLoops(2));
        assertThat(timeline.from()).isZero();
        assertThat(timeline.firstTick()).isNegative();
        assertThat(drums(timeline)).filteredOn(note -> note.tick() < 0).hasSize(1);
        assertThat(drums(timeline))
                .filteredOn(note -> note.tick() < BAR && note.tick() > BAR - SIXTEENTH)
                .hasSize(1);
    }

    @Test
    void buzzIsARunOfFadingBouncesWithinItsStep() {
        List<Note> notes = drums(Timeline.of(Phrases.of("Rz - - -"), ONCE));
        List<Note> first = notes.stream().filter(note -> note.tick() < SIXTEENTH).toList();
        assertThat(first).hasSizeGreaterThan(3);
        assertThat(first).extracting(Note::velocity).isSortedAccordingTo((a, b) -> b - a);
        assertThat(notes.stream().filter(n -> n.tick() % (4 * SIXTEENTH) > SIXTEENTH)).isEmpty();
    }

    @Test
    void closedHiHatStopsTheOpenOne() {
        Phrase phrase = Phrase.of(Phrases.on("R - L -", "R=hi-hat.open", "L=hi-hat.closed"));
        Note open = drums(Timeline.of(phrase, ONCE)).get(0);
        assertThat(open.key()).isEqualTo(OPEN_HI_HAT);
        assertThat(open.end()).isEqualTo(2 * SIXTEENTH);
        assertThat(drums(Timeline.of(phrase, ONCE)).get(1).key()).isEqualTo(CLOSED_HI_HAT);
    }

    @Test
    void pedalStopsTheOpenHiHatAcrossALoopSeam() {
        Phrase phrase = Phrase.of(Phrases.on("H - - - - - - - - - - - - - - R", "R=hi-hat.open"));
        List<Note> notes = drums(Timeline.of(phrase, ONCE.withLoops(2)));
        assertThat(notes).extracting(Note::key).containsSequence(OPEN_HI_HAT, PEDAL_HI_HAT);
        assertThat(notes.get(1).end()).isEqualTo(BAR);
    }

    @Test
    void bothHandsOnOneSoundMakeOneNote() {
        assertThat(drums(Timeline.of(Phrases.of("B - - -"), ONCE))).hasSize(4);
    }

    @Test
    void sectionsInTwoMetersKeepTheBeatsTempo() {
        Phrase phrase =
                Phrases.then(
                        Phrases.recipe("RL", Grid.SIXTEENTHS).weave(),
                        Phrases.recipe("RLR", Grid.SIXTEENTHS.withMeter(Meter.parse("6/8")))
                                .weave());
        Timeline timeline = Timeline.of(phrase, ONCE.withTempo(new Tempo(60)));
        // 4 quarters, then 2 dotted quarters a bar, at 60 beats a minute.
        int lastBars = phrase.sections().get(1).groove().bars();
        assertThat(timeline.tempo().seconds(timeline.to()))
                .isCloseTo(4.0 + 2 * lastBars, within(1e-9));
        assertThat(timeline.tempo().paces())
                .extracting(Pace::meter)
                .containsExactly(new Meter(4, 4), new Meter(6, 8));
        assertThat(timeline.markers()).extracting(Marker::text).containsExactly("time", "fill");
    }

    @Test
    void equalPhrasesAndSettingsGiveEqualTimelines() {
        assertThat(Timeline.of(Phrases.of("lR rL Rz"), ONCE))
                .isEqualTo(Timeline.of(Phrases.of("lR rL Rz"), ONCE));
    }

    private static Playable withBand() {
        return Playable.of(
                Phrases.of("RLRR LRLL", 2),
                Arrangement.of(ChordChart.parse("Dm7 G7 | Cmaj7 %"), BuiltInStyles.load("rock")));
    }

    @Test
    void theBandHasTracksOfItsOwnWhichCanBeLeftOut() {
        assertThat(Timeline.of(withBand(), ONCE).tracks())
                .extracting(Track::part)
                .contains(Part.DRUMS, Part.BASS, Part.COMPING);
        PlaySettings minusOne = ONCE.withMix(Mix.DEFAULT.without(Set.of(Part.DRUMS)));
        assertThat(Timeline.of(withBand(), minusOne).tracks())
                .extracting(Track::part)
                .doesNotContain(Part.DRUMS)
                .contains(Part.BASS, Part.COMPING);
    }

    @Test
    void tempoStepsFollowEachOtherInOneTimeline() {
        PlaySettings stepped =
                ONCE.withLoops(2)
                        .withCourse(new Course.Stepped(TempoSteps.parse("60, 66, 72"), 2, false));
        Timeline timeline = Timeline.of(withBand(), stepped);
        assertThat(timeline.tempo().paces())
                .extracting(pace -> pace.tempo().beatsPerMinute())
                .containsExactly(60, 66, 72);
        assertThat(timeline.to()).isEqualTo(6 * 2 * BAR);
    }

    @Test
    void everyOtherLoopDropsOut() {
        PlaySettings practised =
                ONCE.withLoops(4)
                        .withCourse(
                                new Course.Practised(
                                        new Practice(new Tempo(60), 0, 1, new Tempo(60), true)));
        assertThat(Timeline.of(withBand(), practised).notes())
                .isNotEmpty()
                .allMatch(note -> note.written() / (2 * BAR) % 2 == 0);
    }

    @Test
    void moreThanHoursOfMusicAreRefusedInOneLine() {
        Phrase phrase = Phrases.of("RL", 16);
        assertThatThrownBy(() -> Timeline.of(phrase, ONCE.withLoops(2000)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("2000 loops of 16 bars: expected at most 20000 bars in all");
    }
}
