package org.kitweft.explore.difficulty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class DifficultyTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    @ParameterizedTest(name = "{0} is easier than {1}")
    @CsvSource({
        "RLRLRLRLRLRLRLRL, RLLRRLLRLRRLLLRR",
        "RLRL RLRL RLRL RLRL, RRRR LLLL RRRR LLLL",
        "R-L-R-L-R-L-R-L-, K-K-KKK-K-K-K-K-",
        "RLRL RLRL RLRL RLRL, RLRL BLRL RLRL RLRL",
        "RLRL RLRL RLRL RLRL, >RLRL RLRL >RLRL RLRL",
        "RLRL RLRL RLRL RLRL, lRLRL RLRL RLRL RLRL",
    })
    void ordersStickingsOnOneSurface(String easier, String harder) {
        assertThat(of(plain(easier))).isLessThan(of(plain(harder)));
    }

    /**
     * Fitts 1954, table 1, as regressed in ReachModelTest: 27.69 ms + 111.54 ms a bit, less the 100
     * ms of a repeated stroke; the surface that is struck gives the width.
     */
    @Test
    void countsTheMillisecondsThatMovesTakeLongerThanARepeatedStroke() {
        Recipe recipe = plain("R--- R--- R--- R---");
        SoundName snare = kit.find("snare");
        SoundName floorTom = kit.find("floor-tom");
        Voicing there =
                recipe.voicing()
                        .with(
                                Letter.R,
                                LetterVoicing.on(Limb.RIGHT_HAND, List.of(snare, floorTom)));
        double apart = kit.surfaceOf(snare).distanceTo(kit.surfaceOf(floorTom));
        long over = fitts(apart, kit.surfaceOf(floorTom).diameter());
        long back = fitts(apart, kit.surfaceOf(snare).diameter());
        assertThat(over).isPositive().isNotEqualTo(back);
        assertThat(of(recipe.with(there)).thousandths().get(Burden.TRAVEL))
                .isEqualTo(1000 * (over + back + over));
    }

    private static long fitts(double distance, double width) {
        return Math.round(27.69 + 111.54 * Math.log(distance / width + 1) / Math.log(2) - 100);
    }

    @Test
    void aTargetOfMoreBitsCostsMore() {
        Effort effort = new Effort(kit);
        long stance = afterARest(effort, "snare");
        SoundName ride = kit.find("ride");
        SoundName crash = kit.find("crash");
        double bitsToRide = bits("snare", ride);
        double bitsToCrash = bits("snare", crash);
        assertThat(bitsToCrash).isGreaterThan(bitsToRide);
        assertThat(effort.points(stance, effort.with(0, Limb.RIGHT_HAND, crash)))
                .isGreaterThan(effort.points(stance, effort.with(0, Limb.RIGHT_HAND, ride)));
        assertThat(effort.points(stance, effort.with(0, Limb.RIGHT_HAND, kit.find("snare"))))
                .isZero();
    }

    /** A step later, so that no stroke is the second in a row. */
    private long afterARest(Effort effort, String sound) {
        long struck = effort.with(0, Limb.RIGHT_HAND, kit.find(sound));
        return effort.after(effort.after(Effort.START, struck), 0);
    }

    private double bits(String from, SoundName to) {
        return ReachModel.bits(
                kit.surfaceOf(kit.find(from)).distanceTo(kit.surfaceOf(to)),
                kit.surfaceOf(to).diameter());
    }

    @Test
    void takesAnotherReachModelAtItsWord() {
        Effort slow = new Effort(kit, new ReachModel(1000, 0, 100, 150));
        long tom = slow.with(0, Limb.RIGHT_HAND, kit.find("high-tom"));
        assertThat(slow.points(afterARest(slow, "snare"), tom)).isEqualTo(900);
    }

    @Test
    void noticesHandsThatGoAcrossBeyondTheToleranceNotThatTheyStay() {
        Recipe recipe = plain("RLRL RLRL RLRL RLRL");
        Voicing crossed =
                recipe.voicing()
                        .with(
                                Letter.L,
                                LetterVoicing.on(Limb.LEFT_HAND, List.of(kit.find("floor-tom"))));
        assertThat(of(recipe).thousandths().get(Burden.CROSSINGS)).isZero();
        assertThat(of(recipe.with(crossed)).thousandths().get(Burden.CROSSINGS)).isEqualTo(60_000L);
    }

    @Test
    void goingAcrossAndBackCostsEveryTime() {
        Recipe recipe = plain("RLRL RLRL RLRL RLRL");
        Voicing there =
                recipe.voicing()
                        .with(
                                Letter.L,
                                LetterVoicing.on(
                                        Limb.LEFT_HAND,
                                        List.of(kit.find("floor-tom"), kit.find("snare"))));
        // The left hand is across at strokes 2, 6, 10 and 14.
        assertThat(of(recipe.with(there)).thousandths().get(Burden.CROSSINGS))
                .isEqualTo(4 * 60_000L);
    }

    @Test
    void aLayerBesideTheStickingCostsMoreThanOneWithIt() {
        Recipe recipe = plain("R-L- R-L- R-L- R-L-");
        assertThat(of(withFootOn(recipe, 2, "- x")))
                .isLessThan(of(withFootOn(recipe, 4, "- x - x")));
        assertThat(of(withFootOn(recipe, 2, "- x"))).isLessThan(of(withFootOn(recipe, 3, "x x x")));
    }

    @Test
    void isTheSameHoweverOftenTheBarIsPlayed() {
        Recipe recipe = plain("R-L- R-L- R-L- ----");
        assertThat(of(recipe.withBars(OptionalInt.of(4)))).isEqualTo(of(recipe));
    }

    @Test
    void namesTheHeaviestBurdenFirst() {
        assertThat(new Difficulty(Map.of(Burden.TRAVEL, 5L, Burden.RUNS, 9L)).reasons())
                .containsExactly(Burden.RUNS, Burden.TRAVEL);
    }

    @Test
    void refusesABurdenBelowNothing() {
        assertThatThrownBy(() -> new Difficulty(Map.of(Burden.RUNS, -1L)))
                .hasMessage("strokes in a row by one limb: a burden is 0 or more, not -1");
    }

    private Recipe plain(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), kit);
    }

    private Recipe withFootOn(Recipe recipe, int steps, String figure) {
        Layer layer =
                new Layer(Limb.LEFT_FOOT, kit.find("hi-hat.foot"), steps, Figure.parse(figure));
        return recipe.with(recipe.voicing().withLayers(List.of(layer)));
    }

    private static Difficulty of(Recipe recipe) {
        return Difficulty.of(recipe.weave());
    }
}
