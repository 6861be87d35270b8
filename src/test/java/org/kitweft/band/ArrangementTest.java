package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.RoleVoicings;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.RandomStickings;
import org.kitweft.pattern.Sticking;
import org.kitweft.reference.ReferenceTable;

class ArrangementTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");
    private static final String[] CHORDS = {
        "C",
        "F#m7b5",
        "Bb7(b9,#11)",
        "Ebmaj9",
        "N.C.",
        "G13",
        "Am/G",
        "D7sus4",
        "E5",
        "Abdim7",
        "Dbm(maj7)",
        "B7alt",
        "F69",
        "G+"
    };

    private static Phrase phrase(String sticking, Grid grid, int bars) {
        Recipe recipe = Recipe.plain(Sticking.parse(sticking), KIT).with(grid);
        return PhrasePlan.ofOne(
                        recipe,
                        RoleVoicings.fill(recipe.voicing(), KIT),
                        RoleVoicings.punch(recipe.voicing(), KIT),
                        bars)
                .weave();
    }

    private static Phrase time(String sticking, Grid grid, int bars) {
        Recipe recipe = Recipe.plain(Sticking.parse(sticking), KIT).with(grid);
        return Phrase.of(recipe.withBars(OptionalInt.of(bars)).weave());
    }

    private static List<BandPart> play(String style, String chart, Phrase phrase) {
        return Arrangement.of(ChordChart.parse(chart), BuiltInStyles.load(style)).play(phrase);
    }

    private static Set<Long> onsets(BandPart part) {
        return part.notes().stream()
                .map(BandNote::tick)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Integer> steps(BandPart part, long stepTicks) {
        return onsets(part).stream().map(tick -> (int) (tick / stepTicks)).toList();
    }

    /** Names of General MIDI 1, shared/reference/gm1-programs.csv. */
    @ParameterizedTest
    @ValueSource(strings = {"rock", "funk", "swing", "bossa", "samba", "salsa", "ballad"})
    void theThreePartsHaveTheProgramsOfGeneralMidi(String style) {
        List<BandPart> parts = play(style, "C", phrase("RLRR LRLL", Grid.SIXTEENTHS, 4));
        assertThat(parts.stream().map(BandPart::name))
                .containsExactly("bass", "comping", "punches");
        assertThat(parts.stream().map(BandPart::channel)).doesNotHaveDuplicates();
        assertThat(
                        parts.stream()
                                .map(
                                        part ->
                                                ReferenceTable.rows("gm1-programs.csv")
                                                        .get(part.program())
                                                        .get("name")))
                .containsExactly("electric bass (finger)", "electric piano 1", "brass section");
        assertThat(BuiltInStyles.load(style).reasons()).hasSizeGreaterThanOrEqualTo(4);
    }

    /** Any style on any drums and chords: in range, in time, never two of one key at once. */
    @ParameterizedTest
    @ValueSource(strings = {"rock", "funk", "swing", "bossa", "samba", "salsa", "ballad"})
    void playsAnythingInItsRangeAndTime(String name) {
        Style style = BuiltInStyles.load(name);
        Random random = new Random(name.hashCode());
        List<Sticking> stickings = RandomStickings.of(21, 60, 24).toList();
        for (Sticking sticking : stickings) {
            Meter meter =
                    List.of("4/4", "3/4", "6/8", "12/8", "7/8", "5/4").stream()
                            .map(Meter::parse)
                            .toList()
                            .get(random.nextInt(6));
            List<Integer> choices = List.copyOf(Grid.stepsPerBeatChoices());
            Grid grid =
                    new Grid(
                            meter,
                            choices.get(random.nextInt(choices.size())),
                            50 + random.nextInt(26),
                            random.nextBoolean());
            int bars = 3 + random.nextInt(6);
            Recipe recipe = Recipe.plain(sticking, KIT).with(grid);
            Phrase phrase =
                    PhrasePlan.ofOne(
                                    recipe,
                                    RoleVoicings.fill(recipe.voicing(), KIT),
                                    RoleVoicings.punch(recipe.voicing(), KIT),
                                    bars)
                            .weave();
            Arrangement arrangement =
                    new Arrangement(
                            randomChart(random, bars),
                            style,
                            ClaveDirection.values()[random.nextInt(2)],
                            random.nextLong());
            List<BandPart> parts = arrangement.play(phrase);
            assertThat(arrangement.play(phrase)).as("the same again").isEqualTo(parts);
            check(parts.get(0), style.bass(), phrase);
            check(parts.get(1), style.comping(), phrase);
            check(parts.get(2), style.punches(), phrase);
            assertThat(parts.get(0).notes().stream().map(BandNote::tick)).doesNotHaveDuplicates();
        }
    }

    private static ChordChart randomChart(Random random, int bars) {
        StringBuilder chart = new StringBuilder();
        for (int bar = 0; bar <= random.nextInt(bars); bar++) {
            chart.append(bar == 0 ? "" : " |");
            for (int i = random.nextInt(4); i >= 0; i--) {
                chart.append(' ').append(CHORDS[random.nextInt(CHORDS.length)]);
            }
        }
        return ChordChart.parse(chart.toString());
    }

    private static void check(BandPart part, StyleLine line, Phrase phrase) {
        assertThat(part.notes())
                .allMatch(note -> note.key() >= line.low() && note.key() <= line.high())
                .allMatch(note -> note.end() <= phrase.ticks());
        long[] free = new long[128];
        long before = 0;
        for (BandNote note : part.notes()) {
            assertThat(note.tick()).isGreaterThanOrEqualTo(Math.max(before, free[note.key()]));
            free[note.key()] = note.end();
            before = note.tick();
        }
    }

    @Test
    void anotherSeedGivesAnotherLine() {
        Arrangement arrangement =
                Arrangement.of(
                        ChordChart.parse("Dm7 | G7 | Cmaj7 | A7"), BuiltInStyles.load("swing"));
        Phrase phrase = time("R-RLR-RL", Grid.SIXTEENTHS.withStepsPerBeat(2).withSwing(67), 8);
        assertThat(arrangement.withSeed(1).play(phrase))
                .isNotEqualTo(arrangement.withSeed(2).play(phrase));
    }

    /** A file made today has the same notes on another machine, and after the next change. */
    @Test
    void aSeedStandsForTheSameNotesForGood() {
        Phrase phrase = time("R-RLR-RL", Grid.SIXTEENTHS.withStepsPerBeat(2).withSwing(67), 4);
        BandPart bass =
                Arrangement.of(
                                ChordChart.parse("Dm7 | G7 | Cmaj7 | A7b9"),
                                BuiltInStyles.load("swing"))
                        .withSeed(3)
                        .play(phrase)
                        .get(0);
        assertThat(bass.notes().stream().map(BandNote::key))
                .containsExactly(
                        50, 48, 45, 44, 43, 41, 40, 38, 35, 36, 38, 40, 43, 46, 45, 43, 40, 39);
    }

    @Test
    void theRockBassTakesExactlyTheBassDrumsOnsetsOnRoots() {
        Phrase phrase = time("K-RLK-RKKLR-KLRL", Grid.SIXTEENTHS.withSwing(60), 4);
        BandPart bass = play("rock", "C | F/A | G | Am", phrase).get(0);
        assertThat(onsets(bass)).isEqualTo(kicks(phrase));
        assertThat(bass.notes().stream().map(note -> note.key() % 12).distinct())
                .containsExactly(0, 9, 7);
    }

    @Test
    void theFunkBassTakesThemAndGhostsBetween() {
        Phrase phrase = time("K-RLR-KRL-RKR-RL", Grid.SIXTEENTHS, 2);
        BandPart bass = play("funk", "E9", phrase).get(0);
        assertThat(onsets(bass)).containsAll(kicks(phrase));
        Set<Long> kicks = kicks(phrase);
        List<BandNote> between =
                bass.notes().stream().filter(note -> !kicks.contains(note.tick())).toList();
        assertThat(between).isNotEmpty().allMatch(note -> note.velocity() < 65);
        assertThat(bass.notes().get(0).velocity()).isGreaterThan(95);
        assertThat(bass.notes().stream().mapToInt(BandNote::key).max())
                .hasValue(bass.notes().get(0).key() + 12);
    }

    @Test
    void withoutABassDrumTheRockBassKeepsEighths() {
        BandPart bass = play("rock", "C", time("RL", Grid.SIXTEENTHS, 1)).get(0);
        assertThat(steps(bass, Ticks.PER_QUARTER / 2)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
    }

    private static Set<Long> kicks(Phrase phrase) {
        return phrase.sections().get(0).groove().hits().stream()
                .filter(hit -> hit.sound().surface().equals("bass-drum"))
                .map(Hit::start)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Walking: roots where chords begin, approaches of a half or whole tone: common practice. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5})
    void theWalkingBassStepsIntoEachRoot(long seed) {
        ChordChart chart = ChordChart.parse("Dm7 | G7 | Cmaj7 | Em7 A7 | Dm7 | Db7 | C6 | %");
        Phrase phrase = time("R-RLR-RL", Grid.SIXTEENTHS.withStepsPerBeat(2).withSwing(67), 24);
        BandPart bass =
                Arrangement.of(chart, BuiltInStyles.load("swing"))
                        .withSeed(seed)
                        .play(phrase)
                        .get(0);
        long bar = Meter.COMMON.barTicks();
        int last = bass.notes().get(bass.notes().size() - 1).key();
        assertThat(List.of(1, 2, 10, 11))
                .as("the last note leads into the first, in some octave")
                .contains(Math.floorMod(last - bass.notes().get(0).key(), 12));
        int checked = 0;
        for (int i = 0; i < bass.notes().size(); i++) {
            BandNote note = bass.notes().get(i);
            if (note.tick() % bar == 0) {
                Chord chord = chart.bars().get((int) (note.tick() / bar) % 8).get(0).orElseThrow();
                assertThat(note.key() % 12).isEqualTo(chord.root().pitchClass());
                if (i > 0) {
                    assertThat(Math.abs(note.key() - bass.notes().get(i - 1).key()))
                            .isBetween(1, 2);
                    checked++;
                }
            }
        }
        assertThat(checked).isEqualTo(23);
        assertThat(onsets(bass).stream().filter(tick -> tick % Ticks.PER_QUARTER == 0))
                .as("a note on every beat")
                .hasSize(24 * 4);
    }

    @Test
    void theBandSwingsAsTheDrumsDo() {
        Phrase phrase = time("RLRLRLRL", Grid.SIXTEENTHS.withStepsPerBeat(2).withSwing(62), 4);
        Set<Long> drums =
                phrase.sections().get(0).groove().hits().stream()
                        .map(Hit::start)
                        .collect(Collectors.toSet());
        for (String style : List.of("swing", "bossa", "salsa", "samba", "ballad")) {
            for (BandPart part : play(style, "Dm7 | G7", phrase)) {
                assertThat(drums).as(style + " " + part.name()).containsAll(onsets(part));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"4/4, 3", "6/8, 3", "12/8, 3", "12/8, 6"})
    void besideTripletsTheBandPlaysOnThirds(String meter, int steps) {
        Grid grid = new Grid(Meter.parse(meter), steps, 50, false);
        long third = grid.meter().beatTicks() / 3;
        for (String style : BuiltInStyles.names()) {
            for (BandPart part : play(style, "Dm7 | G7", time("RLL", grid, 4))) {
                assertThat(onsets(part)).allMatch(tick -> tick % third == 0);
            }
        }
    }

    @Test
    void thePunchesAreThoseOfTheHandThatStillSounds() {
        Phrase phrase = phrase("RLRR LRLL", Grid.SIXTEENTHS, 4);
        long punch = 3 * Meter.COMMON.barTicks();
        List<BandPart> parts = play("funk", "C7 | F7 | G7 | C7", phrase);
        Set<Long> strokes =
                phrase.sections().get(2).groove().hits().stream()
                        .map(hit -> punch + hit.start())
                        .collect(Collectors.toCollection(TreeSet::new));
        assertThat(strokes).hasSize(8);
        for (BandPart part : parts) {
            assertThat(onsets(part).stream().filter(tick -> tick >= punch))
                    .as(part.name())
                    .containsExactlyElementsOf(strokes);
        }
        assertThat(onsets(parts.get(2))).isEqualTo(strokes);
    }

    @Test
    void withBothHandsSoundingThePunchesAreTheAccents() {
        Recipe recipe = Recipe.plain(Sticking.parse(">RLR>R LR>LL"), KIT);
        Phrase phrase = new PhrasePlan(List.of(new PlannedSection(Role.PUNCH, recipe, 1))).weave();
        assertThat(steps(play("swing", "C7", phrase).get(2), Grid.SIXTEENTHS.stepTicks()))
                .containsExactly(0, 3, 6, 8, 11, 14);
    }

    @Test
    void whereNoChordIsWrittenTheBandIsSilent() {
        Phrase phrase = time("K-RL", Grid.SIXTEENTHS, 2);
        long bar = Meter.COMMON.barTicks();
        for (String style : BuiltInStyles.names()) {
            for (BandPart part : play(style, "C | N.C.", phrase)) {
                assertThat(part.notes())
                        .as(style)
                        .allMatch(note -> note.tick() >= bar || note.end() <= bar);
            }
            assertThat(play(style, "N.C.", phrase)).allMatch(part -> part.notes().isEmpty());
        }
    }

    @Test
    void aChartLongerThanThePhraseIsRefusedInOneLine() {
        assertThatThrownBy(() -> play("rock", "C | F | G", time("RL", Grid.SIXTEENTHS, 2)))
                .hasMessage("the chart has 3 bars, the phrase only 2");
    }

    @Test
    void notesDoNotReachIntoAnotherChord() {
        Phrase phrase = time("RLRL", Grid.SIXTEENTHS.withStepsPerBeat(2), 4);
        long half = Meter.COMMON.barTicks() / 2;
        BandPart comping = play("ballad", "Dm7 G7 | C Am | F G | C Am", phrase).get(1);
        assertThat(comping.notes()).allMatch(note -> note.end() <= (note.tick() / half + 1) * half);
        assertThat(onsets(comping)).hasSize(8).allMatch(tick -> tick % half == 0);
    }
}
