package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class ConflictsTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");

    private static Groove weave(String sticking, Letter letter, Limb limb, String sound) {
        Recipe recipe = Recipe.plain(Sticking.parse(sticking), KIT);
        return recipe.with(
                        recipe.voicing()
                                .with(letter, LetterVoicing.on(limb, List.of(KIT.find(sound)))))
                .withBars(OptionalInt.of(1))
                .weave();
    }

    private static List<String> lines(Groove groove) {
        return groove.conflicts().stream().map(Conflict::line).toList();
    }

    @Test
    void oneLimbOnTwoSurfacesAtOneInstant() {
        Recipe recipe = Recipe.plain(Sticking.parse("R---"), KIT);
        Layer ride = new Layer(Limb.RIGHT_HAND, KIT.find("ride"), 2, Figure.parse("x"));
        Groove groove = recipe.with(recipe.voicing().withLayers(List.of(ride))).weave();
        assertThat(lines(groove))
                .containsExactly(
                        "the right hand cannot strike ride.bow and snare.head at one instant:"
                                + " bar 1 step 1, bar 1 step 5, bar 1 step 9, bar 1 step 13");
        assertThat(groove.conflicts().get(0).kind()).isEqualTo("two-at-once");
        assertThat(groove.conflicts().get(0).limb()).contains(Limb.RIGHT_HAND);
        assertThat(groove.hits()).as("nothing is dropped").hasSize(4 + 8);
    }

    @Test
    void aLimbThatCannotReach() {
        Groove groove = weave("K---", Letter.K, Limb.RIGHT_FOOT, "snare");
        assertThat(lines(groove).get(0))
                .startsWith("the right foot cannot strike snare.head on this kit: bar 1 step 1, ");
        assertThat(groove.conflicts().get(0).kind()).isEqualTo("out-of-reach");
        assertThat(groove.hits()).hasSize(4);
    }

    @Test
    void aSoundThatTheKitDoesNotHave() {
        Recipe extended = Recipe.plain(Sticking.parse("R---"), BuiltInKits.load("extended"));
        Voicing splash =
                extended.voicing()
                        .with(
                                Letter.R,
                                LetterVoicing.on(
                                        Limb.RIGHT_HAND, List.of(extended.kit().find("splash"))));
        assertThat(extended.with(splash).weave().conflicts()).isEmpty();
        assertThat(extended.with(splash).with(KIT).weave().conflicts())
                .singleElement()
                .isInstanceOf(Conflict.OutOfReach.class);
    }

    @Test
    void openAndClosedHiHatTogether() {
        Groove groove = weave("B---", Letter.R, Limb.RIGHT_HAND, "hi-hat.open");
        assertThat(groove.conflicts()).isEmpty();
        Recipe both =
                new Recipe(
                        groove.sticking(),
                        KIT,
                        groove.voicing()
                                .with(
                                        Letter.L,
                                        LetterVoicing.on(
                                                Limb.LEFT_HAND,
                                                List.of(KIT.find("hi-hat.closed")))),
                        groove.grid(),
                        OptionalInt.of(1));
        assertThat(lines(both.weave()).get(0))
                .startsWith("hi-hat.closed and hi-hat.open cannot sound together: bar 1 step 1");
    }

    @Test
    void aLetterWithNothingToStrike() {
        Groove groove =
                Recipe.plain(Sticking.parse("RK"), BuiltInKits.load("timpani"))
                        .withBars(OptionalInt.of(1))
                        .weave();
        assertThat(lines(groove))
                .containsExactly(
                        "letter K has nothing to strike on this kit; hand it over to another limb"
                                + " or make it tacet: bar 1 step 2, bar 1 step 4, bar 1 step 6,"
                                + " bar 1 step 8, bar 1 step 10, bar 1 step 12 and 2 more");
    }

    @Test
    void theOtherHandOfAFlamHasToBeThere() {
        Recipe recipe = Recipe.plain(Sticking.parse("lR---"), KIT);
        Layer ride = new Layer(Limb.LEFT_HAND, KIT.find("ride"), 1, Figure.parse("x"));
        assertThat(lines(recipe.with(recipe.voicing().withLayers(List.of(ride))).weave()).get(0))
                .startsWith("the left hand cannot strike ride.bow and snare.head at one instant");
    }

    @Test
    void areListedInOrderOfFirstOccurrence() {
        Recipe recipe = Recipe.plain(Sticking.parse("R--- K--- ---- ----"), KIT);
        Layer ride = new Layer(Limb.RIGHT_HAND, KIT.find("ride"), 1, Figure.parse("x - - -"));
        Voicing voicing =
                recipe.voicing()
                        .with(
                                Letter.K,
                                LetterVoicing.on(Limb.RIGHT_FOOT, List.of(KIT.find("hi-hat.foot"))))
                        .withLayers(List.of(ride));
        assertThat(recipe.with(voicing).weave().conflicts().stream().map(Conflict::kind))
                .containsExactly("two-at-once", "out-of-reach");
    }
}
