package org.kitweft.explore.trellis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.stat.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.explore.Choices;
import org.kitweft.explore.Counts;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class PossibilitiesTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");
    private static final Kit MARIMBA = BuiltInKits.load("marimba");
    private static final Choices FOUR =
            Choices.NONE
                    .with("R=snare,high-tom,mid-tom,floor-tom", KIT)
                    .with("L=snare,high-tom,mid-tom,floor-tom", KIT);
    private static final Recipe PARADIDDLE = Recipe.plain(Sticking.parse("RLRR LRLL"), KIT);

    private static Possibilities of(String sticking, Choices choices, Rule... rules) {
        return Possibilities.of(
                Recipe.plain(Sticking.parse(sticking), KIT), choices, List.of(rules));
    }

    @Test
    void withoutRulesEveryAssignmentIsAVariation() {
        assertThat(of("RLRR LRLL", FOUR).total())
                .isEqualTo(Counts.of(PARADIDDLE.sticking(), FOUR).placePerStroke());
    }

    /** Source: OEIS, by way of shared/reference/oeis-counts.csv: exactly d of k surfaces used. */
    static Stream<CSVRecord> exactlyUsed() throws IOException {
        try (var reader =
                Files.newBufferedReader(
                        Path.of("shared/reference/oeis-counts.csv"), StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .get()
                    .parse(reader)
                    .getRecords()
                    .stream()
                    .filter(r -> r.get("count").matches("exactly_\\d_of_k_used|all_k_used"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("exactlyUsed")
    void differentSurfacesAgreeWithThePublishedTable(CSVRecord row) {
        int surfaces = Integer.parseInt(row.get("k"));
        int strokes = Integer.parseInt(row.get("n"));
        int used =
                row.get("count").equals("all_k_used")
                        ? surfaces
                        : Integer.parseInt(row.get("count").replaceAll("\\D", ""));
        Recipe recipe = Recipe.plain(Sticking.parse("R".repeat(strokes)), MARIMBA);
        Choices choices = new Choices(Map.of(Letter.R, bars(surfaces)));
        List<Rule> rules = List.of(new Rule.Surfaces(used, used));
        assertThat(Possibilities.of(recipe, choices, rules).total())
                .isEqualTo(new BigInteger(row.get("value")));
    }

    private static List<SoundName> bars(int count) {
        return MARIMBA.soundNames().subList(0, count);
    }

    @Test
    void drawsEveryVariationWithTheSameChance() {
        Possibilities possibilities =
                of(
                        "RLRLK",
                        FOUR.with("K=bass-drum", KIT),
                        new Rule.Reach(40),
                        Rule.NoCrossing.usual(),
                        new Rule.Loop(),
                        new Rule.Surfaces(2, 4));
        int total = possibilities.total().intValueExact();
        long[] drawn = new long[total];
        int samples = 100 * total;
        possibilities
                .sample(samples, 2026)
                .forEach(variation -> drawn[variation.index().intValueExact()]++);
        double[] expected = new double[total];
        Arrays.fill(expected, 100);
        // One seed, so it passes or fails for good; far off the uniform this would be about 0.
        assertThat(new ChiSquareTest().chiSquareTest(expected, drawn)).isGreaterThan(0.01);
        assertThat(possibilities.sample(20, 7)).isEqualTo(possibilities.sample(20, 7));
    }

    @Test
    void staysExactBeyondTheRangeOfLong() {
        Recipe recipe = Recipe.plain(Sticking.parse("[RLRR LRLL]*8"), MARIMBA);
        Choices choices = new Choices(Map.of(Letter.R, bars(20), Letter.L, bars(20)));
        assertThat(Possibilities.of(recipe, choices, List.of()).total())
                .isEqualTo(BigInteger.valueOf(20).pow(64));
        assertThat(Possibilities.of(recipe, choices, List.of(new Rule.Loop())).total())
                .isEqualTo(BigInteger.valueOf(20).pow(64));
        // With no reach at all each hand stays: 20 places for each.
        assertThat(
                        Possibilities.of(
                                        recipe,
                                        choices,
                                        List.of(new Rule.Reach(0), new Rule.Loop()))
                                .total())
                .isEqualTo(400);
    }

    @Test
    void theWaysOfEachStrokeAddUpWhereALoopHasManyStates() {
        Recipe recipe = Recipe.plain(Sticking.parse("[RLRR LRLL]*3"), MARIMBA);
        Choices choices = new Choices(Map.of(Letter.R, bars(20), Letter.L, bars(20)));
        List<Rule> rules = List.of(new Rule.Reach(30), Rule.NoCrossing.usual(), new Rule.Loop());
        Possibilities possibilities = Possibilities.of(recipe, choices, rules);
        assertThat(possibilities.total().bitLength()).isGreaterThan(Long.SIZE);
        assertThat(possibilities.waysPerStroke().values())
                .hasSize(24)
                .allSatisfy(
                        ways ->
                                assertThat(
                                                ways.values().stream()
                                                        .reduce(BigInteger.ZERO, BigInteger::add))
                                        .isEqualTo(possibilities.total()));
    }

    @ParameterizedTest(name = "loop {0}, different surfaces {1}")
    @CsvSource({"false,false", "true,false", "false,true", "true,true"})
    void hugeTotalsRankDrawAndAddUp(boolean loop, boolean different) {
        Recipe recipe = Recipe.plain(Sticking.parse("[RLRR LRLL]*4 - R"), MARIMBA);
        Choices choices = new Choices(Map.of(Letter.R, bars(9), Letter.L, bars(9)));
        List<Rule> rules = new ArrayList<>();
        rules.add(new Rule.Reach(18));
        rules.add(Rule.NoCrossing.usual());
        rules.add(new Rule.AtTempo(new Tempo(100)));
        if (loop) {
            rules.add(new Rule.Loop());
        }
        if (different) {
            rules.add(new Rule.Surfaces(2, 4));
        }
        Possibilities possibilities = Possibilities.of(recipe, choices, rules);
        BigInteger total = possibilities.total();
        assertThat(total.bitLength()).isGreaterThan(40);
        possibilities
                .waysPerStroke()
                .values()
                .forEach(
                        ways ->
                                assertThat(
                                                ways.values().stream()
                                                        .reduce(BigInteger.ZERO, BigInteger::add))
                                        .isEqualTo(total));
        for (Variation drawn : possibilities.sample(5, 1)) {
            assertThat(possibilities.indexOf(drawn.sounds())).isEqualTo(drawn.index());
            assertThat(possibilities.fault(drawn.sounds())).isEmpty();
        }
        BigInteger last = total.subtract(BigInteger.ONE);
        assertThat(possibilities.from(last)).containsExactly(possibilities.get(last));
    }

    /**
     * Sticking, whether it loops: some limbs strike twice before all have, some late, some once.
     */
    @ParameterizedTest(name = "{0}, loop {1}")
    @CsvSource({
        "RLLR RLRL LRRL RLLL, false",
        "RLLR RLRL LRRL RLLL, true",
        "RRLL RRLL RRLL, true",
        "RRRR LK-K RLRL, true",
        "BRLB RRLL, true",
        "RRRR RRRR RRRL, true",
    })
    void blendedSetsOfSurfacesAgreeWithSetsReadOneByOne(String sticking, boolean loop) {
        Choices choices =
                new Choices(
                        Map.of(
                                Letter.R, bars(8),
                                Letter.L, bars(9),
                                Letter.K, bars(2),
                                Letter.B, bars(6)));
        List<Rule> rules = new ArrayList<>();
        rules.add(new Rule.Reach(11));
        rules.add(Rule.NoCrossing.usual());
        rules.add(new Rule.Surfaces(3, 5));
        if (loop) {
            rules.add(new Rule.Loop());
        }
        Recipe recipe = Recipe.plain(Sticking.parse(sticking), MARIMBA);
        Possibilities blended = Possibilities.of(recipe, choices, rules);
        Possibilities wide = Possibilities.wide(recipe, choices, rules);
        Possibilities bySets = Possibilities.bySets(recipe, choices, rules, true);
        assertThat(blended.total()).isPositive().isEqualTo(bySets.total());
        assertThat(wide.total()).isEqualTo(bySets.total());
        List<Variation> drawn = blended.sample(20, 3);
        for (Variation variation : drawn) {
            assertThat(bySets.get(variation.index())).isEqualTo(variation);
            assertThat(wide.get(variation.index())).isEqualTo(variation);
            assertThat(blended.indexOf(variation.sounds())).isEqualTo(variation.index());
            assertThat(blended.fault(variation.sounds())).isEmpty();
        }
    }

    @Test
    void theBestComeInOrderAmongBillions() {
        Recipe recipe = Recipe.plain(Sticking.parse("RLRR LRLL RLRR LRLL"), KIT);
        Possibilities possibilities =
                Possibilities.of(
                        recipe, FOUR, List.of(Rule.NoCrossing.usual(), new Rule.Surfaces(3, 4)));
        List<Double> travels =
                possibilities
                        .best(Cost.TRAVEL)
                        .limit(200)
                        .map(v -> possibilities.travel(v.sounds()).totalCm())
                        .toList();
        assertThat(travels).isSorted().hasSize(200);
        // Three surfaces for two hands: one move, and none is shorter than from snare to high tom
        // (33.96 cm), mid tom (40.22), or between the toms (31.00).
        assertThat(travels.get(0)).isEqualTo(31);
    }

    @ParameterizedTest(name = "all of {1} bars, loop {0}")
    @CsvSource({"false,8", "true,6"})
    void theBestThatStrikeEverythingAreFoundAtOnce(boolean loop, int bars) {
        Recipe recipe = Recipe.plain(Sticking.parse("[RLRR LRLL]*2"), MARIMBA);
        Choices choices = new Choices(Map.of(Letter.R, bars(bars), Letter.L, bars(bars)));
        List<Rule> rules = new ArrayList<>(List.of(new Rule.Surfaces(bars, bars)));
        if (loop) {
            rules.add(new Rule.Loop());
        }
        Possibilities possibilities = Possibilities.of(recipe, choices, rules);
        int[] looks = new int[1];
        List<Variation> best =
                possibilities.best(Cost.TRAVEL, () -> looks[0]++ > 50_000).limit(3).toList();
        assertThat(best).hasSize(3);
        assertThat(best)
                .extracting(variation -> possibilities.travel(variation.sounds()).totalCm())
                .isSorted();
    }

    @Test
    void theSearchForTheBestEndsWhenItIsStopped() {
        Possibilities possibilities =
                of("[RLRR LRLL]*2", FOUR, new Rule.Surfaces(4, 4), new Rule.Loop());
        int[] looks = new int[1];
        var best = possibilities.best(Cost.TRAVEL, () -> ++looks[0] > 5).iterator();
        assertThat(best.hasNext()).isFalse();
        assertThat(looks[0]).isEqualTo(6);
        assertThat(best.hasNext()).isFalse();
    }

    @Test
    void aVariationIsWovenAsItSays() {
        Possibilities possibilities = of("RLRR LRLL", FOUR, new Rule.Reach(40));
        Variation variation = possibilities.get(BigInteger.valueOf(1234));
        Groove groove = possibilities.recipe(variation).weave();
        assertThat(groove.hitsInBar(1).stream().map(Hit::sound).limit(8))
                .containsExactlyElementsOf(variation.sounds());
        assertThat(groove.conflicts()).isEmpty();
    }

    @Test
    void noVariationIsTooFastForTheTempoAsked() {
        Possibilities possibilities =
                of("RLRR LRLL", FOUR, new Rule.AtTempo(new Tempo(100)), new Rule.Loop());
        assertThat(possibilities.total()).isPositive().isLessThan(of("RLRR LRLL", FOUR).total());
        assertThat(possibilities.from(BigInteger.ZERO))
                .allMatch(
                        v -> possibilities.travel(v.sounds()).tempoCeiling().orElseThrow() >= 100);
    }

    @Test
    void namesTheSmallestContradiction() {
        assertThat(contradiction(Rule.Pin.parse("5=snare", KIT), Rule.Pin.parse("5=ride", KIT)))
                .isEqualTo(
                        "no variation keeps all rules, these contradict each other: pin"
                                + " 5=snare.head; pin 5=ride.bow");
        assertThat(
                        contradiction(
                                new Rule.Loop(),
                                new Rule.AtTempo(new Tempo(60)),
                                new Rule.Reach(20),
                                Rule.Pin.parse("3=snare", KIT),
                                Rule.Pin.parse("4=floor-tom", KIT)))
                .isEqualTo(
                        "no variation keeps all rules, these contradict each other: reach 20 cm;"
                                + " pin 3=snare.head; pin 4=floor-tom.head");
        assertThat(contradiction(new Rule.Surfaces(5, 8)))
                .isEqualTo(
                        "no variation keeps all rules, these contradict each other: surfaces 5..8;"
                                + " R on snare.head, high-tom.head, mid-tom.head, floor-tom.head; L"
                                + " on snare.head, high-tom.head, mid-tom.head, floor-tom.head");
        assertThat(contradiction(new Rule.Surfaces(9, 12)))
                .isEqualTo("no variation keeps this rule: surfaces 9..12");
        assertThat(of("RLRR LRLL", FOUR).contradiction()).isEmpty();
    }

    private static String contradiction(Rule... rules) {
        return of("RLRR LRLL", FOUR, rules).contradiction().orElseThrow().words();
    }

    @Test
    void refusesRulesThatDoNotFitTheSticking() {
        assertThatThrownBy(() -> of("RLRR LRLL", FOUR, Rule.Pin.parse("9=snare", KIT)))
                .hasMessage(
                        "pin 9=snare.head: the sticking has 8 strokes, expected a stroke from 1 to"
                                + " 8");
        assertThatThrownBy(() -> of("RL-R", FOUR, Rule.Pin.parse("3=snare", KIT)))
                .hasMessage("pin 3=snare.head: stroke 3 is a rest, expected one that is played");
        assertThatThrownBy(() -> of("RLK", FOUR))
                .hasMessage(
                        "letter K of the sticking has no choices: expected sounds for it, as in"
                                + " K=snare");
        assertThatThrownBy(
                        () -> of("R", FOUR.with(Letter.R, List.of(new SoundName("gong", "head")))))
                .hasMessageContaining("surface \"gong\" is not in kit \"five-piece\"");
    }

    @Test
    void refusesAnIndexBeyondTheTotal() {
        Possibilities possibilities = of("RL", FOUR);
        assertThatThrownBy(() -> possibilities.get(BigInteger.valueOf(16)))
                .hasMessage("variation 16: expected an index from 0 to 15");
        assertThatThrownBy(() -> possibilities.from(BigInteger.valueOf(-1)))
                .hasMessage("variation -1: expected an index from 0 to 15");
        assertThat(possibilities.from(BigInteger.valueOf(16))).isEmpty();
        Possibilities none = of("RL", FOUR, new Rule.Surfaces(3, 3));
        assertThatThrownBy(() -> none.get(BigInteger.ZERO))
                .hasMessage("variation 0: there are none, no variation keeps all rules");
        assertThat(none.best(Cost.TRAVEL)).isEmpty();
    }

    @Test
    void refusesMoreSetsOfSurfacesThanCanBeCounted() {
        Recipe recipe = Recipe.plain(Sticking.parse("[RL]*16"), MARIMBA);
        Choices choices = new Choices(Map.of(Letter.R, bars(40), Letter.L, bars(40)));
        assertThatThrownBy(
                        () -> Possibilities.of(recipe, choices, List.of(new Rule.Surfaces(10, 12))))
                .hasMessageContaining("surfaces 10..12 of 40: ")
                .hasMessageContaining("choose fewer sounds or a narrower range");
    }

    @Test
    void silenceHasOneVariation() {
        Possibilities silence = of("- -", Choices.NONE);
        assertThat(silence.total()).isEqualTo(1);
        assertThat(silence.from(BigInteger.ZERO))
                .containsExactly(new Variation(BigInteger.ZERO, List.of()));
        assertThat(of("- -", Choices.NONE, new Rule.Surfaces(1, 2)).total()).isZero();
    }
}
