package org.kitweft.explore.rank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.kitweft.explore.Choices;
import org.kitweft.explore.role.Feature;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class RoleRankingTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    private Possibilities possibilities(String sticking, String sounds, List<Rule> rules) {
        Sticking read = Sticking.parse(sticking);
        Choices choices = Choices.NONE;
        for (Letter letter : read.letters()) {
            choices = choices.with(letter + "=" + sounds, kit);
        }
        return Possibilities.of(recipe(read), choices, rules);
    }

    private Recipe recipe(Sticking sticking) {
        return new Recipe(
                sticking, kit, Voicing.plain(kit), Grid.SIXTEENTHS, java.util.OptionalInt.empty());
    }

    /** Thousands of variations: too many to look through in a test, few enough to draw from. */
    private Possibilities big(List<Rule> rules) {
        return possibilities(
                "RLRR LRLL R>LRL RRLL",
                "snare,high-tom,mid-tom,floor-tom,ride,crash,hi-hat.closed",
                rules);
    }

    /** The rule of the ranking once more, said the plain way. */
    private List<Ranked> exhaustive(Possibilities all, Role role, RoleWeights weights) {
        List<Ranked> ranked = new ArrayList<>();
        for (Variation variation : all.from(BigInteger.ZERO).toList()) {
            Groove groove = all.recipe(variation).weave();
            ranked.add(
                    new Ranked(
                            variation,
                            RoleFit.of(groove, weights).of(role).value(),
                            all.travel(variation.sounds()).totalCm(),
                            groove.conflicts().isEmpty()));
        }
        ranked.sort(
                Comparator.<Ranked>comparingInt(r -> r.playable() ? 0 : 1)
                        .thenComparingDouble(r -> -r.score())
                        .thenComparingDouble(Ranked::cm)
                        .thenComparing(r -> r.variation().index()));
        return ranked;
    }

    private static Standing looked(RoleRanking ranking, int looks) {
        ranking.look(looks, () -> false);
        return ranking.standing();
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void fewVariationsAreRankedExactly(Role role) {
        Possibilities all =
                possibilities(">RLR L", "snare,high-tom,floor-tom,crash,hi-hat.closed", List.of());
        RoleRanking ranking = new RoleRanking(all, role, RoleWeights.DEFAULT, Integer.MAX_VALUE, 1);
        assertThat(ranking.look(Integer.MAX_VALUE, () -> false)).isFalse();
        Standing standing = ranking.standing();
        assertThat(standing.isComplete()).isTrue();
        assertThat(standing.looked()).isEqualTo(625);
        assertThat(standing.best()).isEqualTo(exhaustive(all, role, RoleWeights.DEFAULT));
    }

    @Test
    void underRulesOnlyWhatKeepsThemIsRanked() {
        List<Rule> rules =
                List.of(
                        new Rule.Reach(80),
                        Rule.NoCrossing.usual(),
                        new Rule.Pin(2, kit.find("floor-tom")),
                        new Rule.Surfaces(2, 3),
                        new Rule.Loop());
        Possibilities all = possibilities("RLRRL", "snare,high-tom,mid-tom,floor-tom,ride", rules);
        assertThat(all.total()).isGreaterThan(BigInteger.TEN).isLessThan(BigInteger.valueOf(3000));
        Standing standing =
                looked(
                        new RoleRanking(all, Role.FILL, RoleWeights.DEFAULT, 5000, 3),
                        Integer.MAX_VALUE);
        assertThat(standing.best()).isEqualTo(exhaustive(all, Role.FILL, RoleWeights.DEFAULT));
    }

    @Test
    void thousandsAreSearchedFirstAndThenLookedThrough() {
        Possibilities all = possibilities("RLRRLR", "snare,high-tom,mid-tom,floor-tom", List.of());
        assertThat(all.total()).isEqualTo(4096);
        RoleRanking ranking = new RoleRanking(all, Role.FILL, RoleWeights.DEFAULT, 50, 1);
        Standing early = looked(ranking, 2_200);
        assertThat(early.isComplete()).isFalse();
        Standing late = looked(ranking, Integer.MAX_VALUE);
        assertThat(late.isComplete()).isTrue();
        assertThat(late.best())
                .isEqualTo(exhaustive(all, Role.FILL, RoleWeights.DEFAULT).subList(0, 50));
    }

    @Test
    void whatCannotBePlayedComesLast() {
        Recipe doubled = recipe(Sticking.parse("RLRL"));
        Voicing voicing = doubled.voicing();
        LetterVoicing both =
                voicing.letter(Letter.R)
                        .orElseThrow()
                        .withDoublings(
                                List.of(
                                        new Doubling(
                                                Limb.LEFT_HAND, kit.find("hi-hat.open"), false)));
        Choices choices =
                Choices.NONE.with("R=hi-hat.closed,snare", kit).with("L=snare,hi-hat.closed", kit);
        Possibilities all =
                Possibilities.of(doubled.with(voicing.with(Letter.R, both)), choices, List.of());
        Standing standing =
                looked(new RoleRanking(all, Role.TIME, RoleWeights.DEFAULT, 16, 1), 100);
        assertThat(standing.best()).hasSize(16);
        assertThat(standing.best().get(0).playable()).isTrue();
        assertThat(standing.best().get(15).playable()).isFalse();
        assertThat(standing.best()).isEqualTo(exhaustive(all, Role.TIME, RoleWeights.DEFAULT));
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void ofManyTheBestFoundIsNeverWorseThanTheBestOfFourTimesAsManySamples(Role role) {
        Possibilities all = big(List.of());
        assertThat(all.total()).isEqualTo(new BigInteger("7").pow(16));
        double sampled =
                all.sample(8_000, 99).stream()
                        .mapToDouble(v -> RoleFit.of(all.recipe(v).weave()).of(role).value())
                        .max()
                        .orElseThrow();
        Standing standing = looked(new RoleRanking(all, role, RoleWeights.DEFAULT, 20, 1), 2_000);
        assertThat(standing.looked()).isEqualTo(2_000);
        assertThat(standing.isComplete()).isFalse();
        assertThat(standing.best().get(0).score()).isGreaterThanOrEqualTo(sampled);
    }

    @Test
    void whatItShowsIsWhatRoleFitSays() {
        Possibilities all = big(List.of(new Rule.Reach(100), new Rule.Surfaces(2, 5)));
        RoleWeights own = RoleWeights.DEFAULT.with(Role.FILL, Feature.STRONG, -0.7);
        Standing standing = looked(new RoleRanking(all, Role.FILL, own, 20, 5), 1_000);
        assertThat(standing.best()).hasSize(20).isSortedAccordingTo(Ranked.BEST_FIRST);
        for (Ranked ranked : standing.best()) {
            assertThat(all.fault(ranked.variation().sounds())).isEmpty();
            assertThat(all.indexOf(ranked.variation().sounds()))
                    .isEqualTo(ranked.variation().index());
            assertThat(ranked.score())
                    .isEqualTo(
                            RoleFit.of(all.recipe(ranked.variation()).weave(), own)
                                    .of(Role.FILL)
                                    .value());
        }
    }

    @Test
    void theBestNeverGetsWorseAndTheOrderOfLooksDoesNotDependOnPortions() {
        Possibilities all = big(List.of());
        RoleRanking atOnce = new RoleRanking(all, Role.PUNCH, RoleWeights.DEFAULT, 10, 7);
        RoleRanking portions = new RoleRanking(all, Role.PUNCH, RoleWeights.DEFAULT, 10, 7);
        double before = 0;
        for (int i = 0; i < 15; i++) {
            double now = looked(portions, 100).best().get(0).score();
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(portions.standing()).isEqualTo(looked(atOnce, 1_500));
    }

    @Test
    void itCanBeStoppedAndGoesOn() {
        Possibilities all = big(List.of());
        RoleRanking ranking = new RoleRanking(all, Role.TIME, RoleWeights.DEFAULT, 10, 7);
        AtomicInteger asked = new AtomicInteger();
        assertThat(ranking.look(1_000, () -> asked.incrementAndGet() > 20)).isTrue();
        assertThat(ranking.standing().looked()).isLessThanOrEqualTo(20);
        assertThat(looked(ranking, 30).looked()).isLessThanOrEqualTo(50).isGreaterThan(20);
    }

    /** The least travel strikes few surfaces: looking for it first would take for ever here. */
    @Test
    void whereManySurfacesAreWantedItDoesNotBeginWithTheLeastTravel() {
        Possibilities all = big(List.of(new Rule.Surfaces(7, 7), new Rule.Loop()));
        Standing standing =
                looked(new RoleRanking(all, Role.FILL, RoleWeights.DEFAULT, 10, 7), 200);
        assertThat(standing.looked()).isEqualTo(200);
        assertThat(standing.best().get(0).variation().sounds().stream().distinct()).hasSize(7);
    }

    @Test
    void noVariationsAreRankedAtOnce() {
        Possibilities none =
                possibilities(
                        "RLRL", "snare,crash", List.of(new Rule.Reach(0), new Rule.Surfaces(4, 4)));
        RoleRanking ranking = new RoleRanking(none, Role.TIME, RoleWeights.DEFAULT, 10, 7);
        assertThat(ranking.look(10, () -> false)).isFalse();
        assertThat(ranking.standing().best()).isEmpty();
    }

    @Test
    void oneVariationIsTheBest() {
        Possibilities one = possibilities("RLRL", "snare", List.of());
        RoleRanking ranking = new RoleRanking(one, Role.TIME, RoleWeights.DEFAULT, 10, 7);
        assertThat(ranking.look(10, () -> false)).isFalse();
        assertThat(ranking.standing().best()).hasSize(1);
    }

    @Test
    void restsOnlyLeaveOneVariationWithoutSounds() {
        Possibilities rests =
                Possibilities.of(recipe(Sticking.parse("- -")), Choices.NONE, List.of());
        RoleRanking ranking = new RoleRanking(rests, Role.TIME, RoleWeights.DEFAULT, 10, 7);
        ranking.look(10, () -> false);
        assertThat(ranking.standing().looked()).isEqualTo(rests.total().intValueExact());
    }

    @Test
    void atLeastOneMustBeWanted() {
        Possibilities one = possibilities("RLRL", "snare", List.of());
        assertThatThrownBy(() -> new RoleRanking(one, Role.TIME, RoleWeights.DEFAULT, 0, 7))
                .hasMessage("the best 0: expected 1 or more");
    }
}
