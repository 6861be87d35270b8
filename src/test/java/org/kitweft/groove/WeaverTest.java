package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.RandomStickings;
import org.kitweft.pattern.Sticking;

class WeaverTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");

    private static Recipe recipe(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), KIT);
    }

    private static List<SoundName> sounds(String... names) {
        return Stream.of(names).map(KIT::find).toList();
    }

    private static Recipe on(Recipe recipe, Letter letter, String... names) {
        LetterVoicing voiced = recipe.voicing().letter(letter).orElseThrow();
        return recipe.with(recipe.voicing().with(letter, voiced.withPath(sounds(names))));
    }

    private static Recipe layered(Recipe recipe, String sound, Limb limb, int steps, String text) {
        List<Layer> layers = new ArrayList<>(recipe.voicing().layers());
        layers.add(new Layer(limb, KIT.find(sound), steps, Figure.parse(text)));
        return recipe.with(recipe.voicing().withLayers(layers));
    }

    /** What sounds, as steps from 0 and surfaces. */
    private static String written(Groove groove) {
        return groove.hits().stream()
                .map(hit -> hit.written() / groove.grid().stepTicks() + hit.sound().surface())
                .collect(Collectors.joining(" "));
    }

    @Test
    void strokesTakeTheSoundsOfAPathInTurn() {
        Recipe recipe = on(recipe("RLRRLR"), Letter.R, "high-tom", "floor-tom");
        assertThat(written(recipe.withBars(OptionalInt.of(1)).weave()))
                .startsWith(
                        "0high-tom 1snare 2floor-tom 3high-tom 4snare 5floor-tom"
                                + " 6high-tom 7snare 8floor-tom");
    }

    @Test
    void aPathOfThreeOnFourRightStrokesStartsAgainWithTheBar() {
        Recipe recipe = on(recipe("RRRR"), Letter.R, "snare", "high-tom", "mid-tom");
        Groove groove = recipe.withBars(OptionalInt.of(2)).weave();
        assertThat(groove.hitsInBar(1).get(15).sound()).isEqualTo(KIT.find("snare"));
        assertThat(groove.hitsInBar(2).get(0).sound()).isEqualTo(KIT.find("snare"));
        assertThat(groove.hitsInBar(2).get(1).sound()).isEqualTo(KIT.find("high-tom"));
    }

    @Test
    void accentsAndGhostsTakePathsOfTheirOwn() {
        Recipe recipe = recipe(">R (R) R >R");
        LetterVoicing voiced =
                recipe.voicing()
                        .letter(Letter.R)
                        .orElseThrow()
                        .withAccents(sounds("crash", "ride"))
                        .withGhosts(sounds("snare.cross-stick"));
        Groove groove = recipe.with(recipe.voicing().with(Letter.R, voiced)).weave();
        assertThat(groove.hits().stream().limit(4).map(hit -> hit.sound().text()))
                .containsExactly("crash.edge", "snare.cross-stick", "snare.head", "ride.bow");
        assertThat(groove.hits().stream().limit(4).map(Hit::velocity))
                .containsExactly(115, 40, 80, 115);
    }

    /** Least common multiple of strokes and steps of a bar: 3 and 16 meet after 3 bars. */
    @ParameterizedTest(name = "{0} strokes in {1}, {2} steps a beat: {3} bars")
    @CsvSource({
        "3, 4/4, 4, 3",
        "5, 4/4, 4, 5",
        "6, 4/4, 4, 3",
        "8, 4/4, 4, 1",
        "7, 7/8, 2, 1",
        "5, 6/8, 3, 5",
        "24, 4/4, 4, 3",
        "512, 4/4, 4, 32",
        "9, 3/4, 6, 1"
    })
    void overTheBarItRunsUntilBothMeet(int strokes, String meter, int steps, int bars) {
        Sticking sticking = Sticking.parse("[R]*" + strokes);
        Grid grid = new Grid(Meter.parse(meter), steps, 50, true);
        Groove groove = Recipe.plain(sticking, KIT).with(grid).weave();
        assertThat(groove.bars()).isEqualTo(bars);
        assertThat(groove.comesRound()).isTrue();
        assertThat(groove.hits().stream().map(hit -> hit.stroke().orElseThrow()).toList())
                .startsWith(0)
                .endsWith(strokes - 1);
    }

    @Test
    void notOverTheBarItStartsAgainWithEachBar() {
        Groove groove = recipe("R--").withBars(OptionalInt.of(2)).weave();
        assertThat(groove.hits().stream().map(hit -> hit.place().step()))
                .containsExactly(1, 4, 7, 10, 13, 16, 1, 4, 7, 10, 13, 16);
    }

    @Test
    void longerThanABarItStartsAgainAtTheBarLineAfterItsEnd() {
        Groove groove = recipe("[R]*20").withBars(OptionalInt.of(3)).weave();
        assertThat(groove.hitsInBar(2).get(4).stroke()).hasValue(0);
        assertThat(groove.hitsInBar(3).get(0).stroke()).hasValue(0);
        assertThat(recipe("[R]*20").weave().bars()).isEqualTo(2);
    }

    @Test
    void layersRunThroughTheBarLineWithTheirOwnLength() {
        Groove groove =
                layered(recipe("R---"), "ride", Limb.LEFT_HAND, 2, "x - -")
                        .withBars(OptionalInt.of(2))
                        .weave();
        assertThat(
                        groove.hits().stream()
                                .filter(hit -> hit.source() == HitSource.LAYER)
                                .map(hit -> hit.place().toString()))
                .containsExactly(
                        "bar 1 step 1",
                        "bar 1 step 7",
                        "bar 1 step 13",
                        "bar 2 step 3",
                        "bar 2 step 9",
                        "bar 2 step 15");
        assertThat(groove.cycleBars()).isEqualTo(3);
        assertThat(groove.comesRound()).isFalse();
    }

    /** Two primes far beyond what long can multiply up to: named as never coming round. */
    @Test
    void cyclesBeyondAnyNumberDoNotFail() {
        Recipe recipe = recipe("R").withBars(OptionalInt.of(1));
        for (int length : List.of(509, 503, 499, 491, 487, 479, 467, 463, 461)) {
            recipe = layered(recipe, "ride", Limb.LEFT_HAND, 7, "x " + "- ".repeat(length - 1));
        }
        assertThat(recipe.weave().comesRound()).isFalse();
    }

    @Test
    void bothHandsAreRightAndLeftAtOnceAndTacetSilencesALetter() {
        Recipe recipe = on(recipe("B---"), Letter.R, "crash");
        assertThat(written(recipe.weave())).startsWith("0crash 0snare 4crash");
        LetterVoicing silent = recipe.voicing().letter(Letter.L).orElseThrow().withTacet(true);
        Groove tacet = recipe.with(recipe.voicing().with(Letter.L, silent)).weave();
        assertThat(written(tacet)).isEqualTo("0crash 4crash 8crash 12crash");
        assertThat(tacet.conflicts()).isEmpty();
    }

    @Test
    void bothHandsWithAnEntryOfTheirOwnStrikeItsSound() {
        Recipe recipe = recipe("B---");
        Groove groove =
                recipe.with(
                                recipe.voicing()
                                        .with(
                                                Letter.B,
                                                LetterVoicing.on(
                                                        Limb.RIGHT_HAND, sounds("floor-tom"))))
                        .withBars(OptionalInt.of(1))
                        .weave();
        assertThat(groove.hits().stream().limit(2).map(Hit::limb))
                .containsExactly(Limb.RIGHT_HAND, Limb.LEFT_HAND);
        assertThat(groove.hits()).allMatch(hit -> hit.sound().surface().equals("floor-tom"));
    }

    @Test
    void aDoublingJoinsEveryStrokeOrAccentsOnly() {
        Recipe recipe = recipe(">R R L L");
        Doubling kick = new Doubling(Limb.RIGHT_FOOT, KIT.find("bass-drum"), true);
        LetterVoicing voiced =
                recipe.voicing().letter(Letter.R).orElseThrow().withDoublings(List.of(kick));
        Groove groove = recipe.with(recipe.voicing().with(Letter.R, voiced)).weave();
        assertThat(written(groove)).startsWith("0snare 0bass-drum 1snare 2snare 3snare 4snare");
    }

    @Test
    void singleStrokesGoElsewhereInEveryPass() {
        Recipe recipe = recipe("RLRR LRLL");
        Groove groove = recipe.with(recipe.voicing().withStroke(4, KIT.find("floor-tom"))).weave();
        assertThat(
                        groove.hits().stream()
                                .filter(hit -> hit.sound().surface().equals("floor-tom"))
                                .map(hit -> hit.place().step()))
                .containsExactly(5, 13);
    }

    @Test
    void oneLimbOnOneSoundTwiceAtOneInstantIsOneHitTheLouder() {
        Recipe recipe = layered(recipe("R---"), "snare", Limb.RIGHT_HAND, 1, ">x");
        Groove groove = recipe.weave();
        assertThat(groove.hits()).hasSize(4).allMatch(hit -> hit.velocity() == 115);
        assertThat(groove.conflicts()).isEmpty();
    }

    @Test
    void swingDelaysEverySecondStepAndKeepsWhereItIsWritten() {
        Grid grid = Grid.SIXTEENTHS.withStepsPerBeat(2).withSwing(75);
        Hit second = recipe("RL").with(grid).weave().hits().get(1);
        assertThat(second.written()).isEqualTo(8_400);
        assertThat(second.start()).isEqualTo(12_600);
    }

    @Test
    void allSoundsInTimeWithinTheGrooveAndOnTheGrid() {
        RandomStickings.of(9, 300, 40)
                .forEach(
                        sticking -> {
                            Recipe recipe = Recipe.plain(sticking, KIT);
                            Groove groove = recipe.withBars(OptionalInt.of(3)).weave();
                            assertThat(groove.hits()).isSortedAccordingTo(Hit.IN_TIME);
                            assertThat(groove.hits())
                                    .allMatch(hit -> hit.start() < groove.ticks())
                                    .allMatch(
                                            hit ->
                                                    (hit.place().bar() - 1)
                                                                            * groove.grid()
                                                                                    .meter()
                                                                                    .barTicks()
                                                                    + (hit.place().step() - 1)
                                                                            * groove.grid()
                                                                                    .stepTicks()
                                                            == hit.written());
                            assertThat(recipe.withBars(OptionalInt.of(3)).weave())
                                    .isEqualTo(groove);
                        });
    }

    @Test
    void aPlainStickingOfOneHandAtATimeIsStruckOncePerStroke() {
        Sticking sticking = Sticking.parse("RLKH -RLL");
        Groove groove = Recipe.plain(sticking, KIT).weave();
        assertThat(groove.hits()).hasSize(2 * sticking.struckCount());
        assertThat(groove.conflicts()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0", "513", "-1"})
    void barsOutsideTheirRangeAreRefused(int bars) {
        assertThatThrownBy(() -> recipe("R").withBars(OptionalInt.of(bars)))
                .hasMessageContaining("expected 1 to 512");
    }

    @Test
    void aHandedOverLetterStrikesWhatItsNewLimbCan() {
        Recipe recipe = recipe("RLRR");
        Voicing kicked = recipe.voicing().handedOver(Letter.R, Limb.RIGHT_FOOT, KIT);
        assertThat(kicked.letter(Letter.R).orElseThrow())
                .isEqualTo(LetterVoicing.on(Limb.RIGHT_FOOT, sounds("bass-drum")));
        Kit timpani = BuiltInKits.load("timpani");
        assertThatThrownBy(
                        () -> Voicing.plain(timpani).handedOver(Letter.R, Limb.LEFT_FOOT, timpani))
                .hasMessage("kit \"timpani\" has nothing for the left foot");
    }

    @Test
    void indexesOfSingleStrokesHaveARange() {
        TreeMap<Integer, SoundName> strokes = new TreeMap<>();
        strokes.put(512, KIT.find("snare"));
        assertThatThrownBy(() -> recipe("R").voicing().withStrokes(strokes))
                .hasMessage("a stroke's index lies between 1 and 512");
    }
}
