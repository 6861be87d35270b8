package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.NavigableSet;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.kitweft.reference.ReferenceTable;

/**
 * Lines against the timelines of shared/reference/syncopation.csv (Gómez and others 2005, Toussaint
 * 2013), 16 pulses, side of three first.
 */
class ClaveTest {

    private static NavigableSet<Integer> timeline(String name, ClaveDirection direction) {
        String onsets =
                ReferenceTable.rows("syncopation.csv").stream()
                        .filter(row -> row.get("name").equals(name))
                        .findFirst()
                        .orElseThrow()
                        .get("onsets");
        int turn = direction == ClaveDirection.TWO_THREE ? 8 : 0;
        return IntStream.range(0, 16)
                .filter(pulse -> onsets.charAt((pulse + turn) % 16) == 'x')
                .boxed()
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Pulses 0 to 15 that a part strikes in its second time round, past any opening. */
    private static NavigableSet<Integer> pulses(
            String style, ClaveDirection direction, int part, int pulsesPerBeat) {
        Grid grid = Grid.SIXTEENTHS.withStepsPerBeat(pulsesPerBeat);
        Recipe recipe = Recipe.plain(Sticking.parse("RLRL"), BuiltInKits.load("five-piece"));
        Phrase phrase = Phrase.of(recipe.with(grid).withBars(OptionalInt.of(4)).weave());
        long cycle = 16 * grid.stepTicks();
        return Arrangement.of(ChordChart.parse("Cm7"), BuiltInStyles.load(style))
                .with(direction)
                .play(phrase)
                .get(part)
                .notes()
                .stream()
                .filter(note -> note.tick() >= cycle && note.tick() < 2 * cycle)
                .map(note -> (int) ((note.tick() - cycle) / grid.stepTicks()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest(name = "{0}, {1} pulses a beat")
    @CsvSource({"THREE_TWO, 2", "TWO_THREE, 2", "THREE_TWO, 4", "TWO_THREE, 4"})
    void bossaChordsStrikeTheBossaNovaTimeline(ClaveDirection direction, int pulses) {
        assertThat(pulses("bossa", direction, 1, pulses))
                .isEqualTo(timeline("bossa-nova", direction));
    }

    /** Four of the timeline's five strokes, the fifth a pulse early; against the clave one only. */
    @ParameterizedTest(name = "{0}, {1} pulses a beat")
    @CsvSource({"THREE_TWO, 2", "TWO_THREE, 2", "THREE_TWO, 4", "TWO_THREE, 4"})
    void sambaChordsHoldTheBossaNovaTimeline(ClaveDirection direction, int pulses) {
        NavigableSet<Integer> chords = pulses("samba", direction, 1, pulses);
        NavigableSet<Integer> missing = timeline("bossa-nova", direction);
        missing.removeAll(chords);
        assertThat(missing).hasSize(1);
        assertThat(chords).contains(Math.floorMod(missing.first() - 1, 16));
        NavigableSet<Integer> against = timeline("bossa-nova", other(direction));
        against.retainAll(chords);
        assertThat(against).hasSize(1);
    }

    /** In both sides: the second and third strokes of the side of three, son clave. */
    @ParameterizedTest
    @CsvSource({"THREE_TWO", "TWO_THREE"})
    void theSalsaBassStrikesTheSecondAndThirdStrokesOfTheSideOfThree(ClaveDirection direction) {
        NavigableSet<Integer> three =
                new TreeSet<>(timeline("son", ClaveDirection.THREE_TWO).headSet(8));
        assertThat(three).containsExactly(0, 3, 6);
        three.remove(0);
        NavigableSet<Integer> bass = pulses("salsa", direction, 0, 2);
        assertThat(bass.headSet(8)).isEqualTo(three);
        assertThat(bass.tailSet(8).stream().map(pulse -> pulse - 8))
                .containsExactlyElementsOf(three);
    }

    /**
     * The clave's side of three is the one with a stroke off the beat, in son as in rumba; the
     * salsa chords are off the beat throughout there, and meet the beat on the side of two, where
     * they strike the clave's first stroke.
     */
    @ParameterizedTest
    @CsvSource({"son, THREE_TWO", "son, TWO_THREE", "rumba, THREE_TWO", "rumba, TWO_THREE"})
    void salsaChordsSyncopateOnTheSideOfThree(String clave, ClaveDirection direction) {
        NavigableSet<Integer> timeline = timeline(clave, direction);
        NavigableSet<Integer> chords = pulses("salsa", direction, 1, 2);
        boolean threeFirst = offTheBeat(timeline, 0) > offTheBeat(timeline, 8);
        assertThat(threeFirst).isEqualTo(direction == ClaveDirection.THREE_TWO);
        int three = threeFirst ? 0 : 8;
        int two = 8 - three;
        assertThat(offTheBeat(chords, three)).isEqualTo(chords.subSet(three, three + 8).size());
        assertThat(offTheBeat(chords, two)).isLessThan(chords.subSet(two, two + 8).size());
        assertThat(chords).contains(two).contains(timeline.subSet(two, two + 8).first());
    }

    private static long offTheBeat(NavigableSet<Integer> pulses, int from) {
        return pulses.subSet(from, from + 8).stream().filter(pulse -> pulse % 2 == 1).count();
    }

    @Test
    void theSalsaBassTakesTheComingChordBeforeTheBarLine() {
        Grid grid = Grid.SIXTEENTHS.withStepsPerBeat(2);
        Recipe recipe = Recipe.plain(Sticking.parse("RLRL"), BuiltInKits.load("five-piece"));
        Phrase phrase = Phrase.of(recipe.with(grid).withBars(OptionalInt.of(4)).weave());
        List<BandNote> bass =
                Arrangement.of(ChordChart.parse("Cm7 | Fm7 | G7 | %"), BuiltInStyles.load("salsa"))
                        .play(phrase)
                        .get(0)
                        .notes();
        long bar = grid.meter().barTicks();
        List<Integer> onFour =
                bass.stream()
                        .filter(note -> note.tick() % bar == 6 * grid.stepTicks())
                        .map(note -> note.key() % 12)
                        .toList();
        assertThat(onFour).as("F, G, G, and C for the next time round").containsExactly(5, 7, 7, 0);
        assertThat(bass.get(0).tick()).as("the first bar is given its one").isZero();
        assertThat(bass.stream().filter(note -> note.tick() % bar == 0)).hasSize(1);
    }

    /** The low drum of a samba speaks on two: common practice, no source. */
    @Test
    void theSambaBassIsLoudestOnTwo() {
        Grid grid = Grid.SIXTEENTHS;
        Recipe recipe = Recipe.plain(Sticking.parse("RLRL"), BuiltInKits.load("five-piece"));
        Phrase phrase = Phrase.of(recipe.with(grid).withBars(OptionalInt.of(2)).weave());
        List<BandNote> bass =
                Arrangement.of(ChordChart.parse("C6"), BuiltInStyles.load("samba"))
                        .play(phrase)
                        .get(0)
                        .notes();
        long beat = grid.meter().beatTicks();
        int loudest = bass.stream().mapToInt(BandNote::velocity).max().orElseThrow();
        assertThat(bass.stream().filter(note -> note.velocity() == loudest))
                .isNotEmpty()
                .allMatch(note -> note.tick() % (2 * beat) == beat);
    }

    private static ClaveDirection other(ClaveDirection direction) {
        return direction == ClaveDirection.THREE_TWO
                ? ClaveDirection.TWO_THREE
                : ClaveDirection.THREE_TWO;
    }
}
