package org.kitweft.explore.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.difficulty.Burden;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

class StickingSearchTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    /** The founder's demand on the search: of 1,000 woven grooves every one is recovered. */
    @Test
    void recoversAThousandRandomGroovesWithTheOriginalAmongTheAnswers() {
        RandomRecipes recipes = new RandomRecipes(3);
        for (int i = 0; i < 1000; i++) {
            Recipe original = recipes.next(16);
            Target target = Target.of(original.weave());
            Found found = found(target, SearchSpace.WHOLE.withStrokes(16));
            Optional<Answer> answer = found.with(original.sticking());
            assertThat(answer)
                    .as("groove %d: %s with %s", i, original.sticking(), original.voicing())
                    .isPresent();
            assertThat(letters(answer.get().recipe().sticking()))
                    .isEqualTo(letters(original.sticking()));
            assertProduces(answer.get(), target);
            for (Answer first : found.first(5)) {
                assertProduces(first, target);
            }
        }
    }

    /** The search's points are those of the one definition of difficulty. */
    @Test
    void theEffortOfAnAnswerIsItsDifficultysMoves() {
        RandomRecipes recipes = new RandomRecipes(4);
        for (int i = 0; i < 50; i++) {
            Target target = Target.of(recipes.next(16).weave());
            for (Answer answer : found(target, SearchSpace.WHOLE).first(3)) {
                if (liesOnTheSteps(answer.recipe())) {
                    Map<Burden, Long> burdens =
                            Difficulty.of(answer.recipe().weave()).thousandths();
                    long moves =
                            Stream.of(Burden.TRAVEL, Burden.RUNS, Burden.CROSSINGS, Burden.TOGETHER)
                                    .mapToLong(burden -> burdens.getOrDefault(burden, 0L))
                                    .sum();
                    // Each burden is rounded to a thousandth of a point a bar.
                    assertThat((double) moves * target.bars() / 1000)
                            .isCloseTo(answer.points(), within(0.01 * target.bars()));
                }
            }
        }
    }

    /** A layer that is slower than the grid has all its steps on it. */
    private static boolean liesOnTheSteps(Recipe recipe) {
        int steps = recipe.grid().stepsPerBeat();
        return recipe.voicing().layers().stream().allMatch(l -> steps % l.stepsPerBeat() == 0);
    }

    @Test
    void theEasiestAnswerToASingleLineAlternatesTheHands() {
        Target target = Target.of(plain("RRRR LLLL RRRR LLLL").weave());
        Answer easiest = found(target, SearchSpace.WHOLE).first(1).get(0);
        assertThat(easiest.recipe().sticking().text()).isEqualTo("RLRL RLRL RLRL RLRL");
        assertThat(easiest.recipe().voicing()).isEqualTo(plain("R").voicing());
        assertThat(easiest.additions()).isEmpty();
    }

    @Test
    void aTimeGrooveWithFeetUnderTheHandsNeedsOneLayerOnly() {
        Layer ride =
                new Layer(Limb.RIGHT_HAND, kit.find("ride"), 2, Figure.parse("x x x x x x x x"));
        Recipe groove = plain("K--- L--- K-K- L---");
        groove = groove.with(groove.voicing().withLayers(List.of(ride)));
        Answer easiest = found(Target.of(groove.weave()), SearchSpace.WHOLE).first(1).get(0);
        assertThat(easiest.additions()).hasSize(1);
        assertProduces(easiest, Target.of(groove.weave()));
    }

    @Test
    void aPathThatComesRoundIsWrittenOnce() {
        Recipe recipe = plain("RLRL RLRL RLRL RLRL");
        LetterVoicing round =
                LetterVoicing.on(
                        Limb.RIGHT_HAND, List.of(kit.find("high-tom"), kit.find("floor-tom")));
        Recipe original = recipe.with(recipe.voicing().with(Letter.R, round));
        Answer answer =
                found(Target.of(original.weave()), SearchSpace.WHOLE)
                        .with(original.sticking())
                        .orElseThrow();
        assertThat(answer.recipe().voicing()).isEqualTo(original.voicing());
    }

    @Test
    void oneStrokeElsewhereIsWrittenAsOneStroke() {
        Recipe recipe = plain("RLRL RLRL RLRL RLRL");
        Recipe original = recipe.with(recipe.voicing().withStroke(4, kit.find("crash")));
        Answer answer =
                found(Target.of(original.weave()), SearchSpace.WHOLE)
                        .with(original.sticking())
                        .orElseThrow();
        assertThat(answer.recipe().voicing()).isEqualTo(original.voicing());
    }

    @Test
    void findsAShortStickingThatRunsOverTheBar() {
        Recipe recipe = plain("RLK").with(Grid.SIXTEENTHS.withOverTheBar(true));
        Target target = Target.of(recipe.weave());
        Found found = found(target, SearchSpace.WHOLE.withStrokes(3));
        assertThat(found.first(1).get(0).recipe().sticking().text()).isEqualTo("RLK");
        assertProduces(found.first(1).get(0), target);
    }

    @Test
    void countsWhatItWouldList() {
        Target target = Target.of(plain("RLRL R-BK").withBars(OptionalInt.of(1)).weave());
        Found found = found(target, SearchSpace.WHOLE.withMostAdditions(0).withStrokes(8));
        assertThat(found.first(100_000))
                .filteredOn(answer -> answer.additions().isEmpty())
                .hasSize(found.countOfSimplest().intValueExact());
    }

    @Test
    void showsWhichLettersAStrokeCanBe() {
        Target target = Target.of(plain("R-K-").weave());
        List<Set<Letter>> letters =
                found(target, SearchSpace.WHOLE.withStrokes(4)).lettersOfSimplest();
        assertThat(letters.get(0)).containsExactly(Letter.R, Letter.L);
        assertThat(letters.get(1)).isEmpty();
        assertThat(letters.get(2)).containsExactly(Letter.K);
    }

    /** A sticking of n strokes for two hands has 2^n forms, design section 7; B adds none here. */
    @Test
    void singleStrokesAreExplainedByOneHandEach() {
        Target target = Target.of(plain("RLRL RLRL").withBars(OptionalInt.of(1)).weave());
        Found found = found(target, SearchSpace.WHOLE.withStrokes(8));
        assertThat(found.countOfSimplest()).isEqualTo(256);
        assertThat(found.first(256))
                .noneMatch(answer -> answer.recipe().sticking().text().contains("B"));
    }

    @Test
    void bothHandsOnOneSoundAreFoundAsAUnisonAfterSingleStrokes() {
        Recipe original = plain("RBLB R-B-");
        Target target = Target.of(original.weave());
        for (int most = 0; most <= SearchSpace.MOST; most++) {
            Answer answer =
                    found(target, SearchSpace.WHOLE.withStrokes(8).withMostAdditions(most))
                            .with(original.sticking())
                            .orElseThrow();
            assertThat(answer.additions()).containsExactly(new Addition.Unison());
            assertThat(answer.recipe().voicing()).isEqualTo(original.voicing());
            assertProduces(answer, target);
        }
    }

    @Test
    void twoSoundsAtOnceAreBothHandsWithoutAnyAddition() {
        Recipe recipe = plain("BRBR LRBR");
        LetterVoicing hat = LetterVoicing.on(Limb.RIGHT_HAND, List.of(kit.find("hi-hat")));
        Recipe original = recipe.with(recipe.voicing().with(Letter.R, hat));
        Found found = found(Target.of(original.weave()), SearchSpace.WHOLE.withStrokes(8));
        assertThat(found.with(original.sticking()).orElseThrow().additions()).isEmpty();
        assertThat(found.lettersOfSimplest().get(0)).containsExactly(Letter.B);
        assertThat(found.lettersOfSimplest().get(1)).containsExactly(Letter.R, Letter.L);
    }

    /** A sticking that meets the bar line elsewhere in each pass: two sounds in one of them. */
    @Test
    void bothHandsMayMeetOnOneSoundInSomePasses() {
        Recipe recipe = plain("BRL").with(Grid.SIXTEENTHS.withOverTheBar(true));
        LetterVoicing path =
                LetterVoicing.on(
                        Limb.RIGHT_HAND,
                        List.of(kit.find("floor-tom"), kit.find("snare"), kit.find("snare")));
        Recipe original = recipe.with(recipe.voicing().with(Letter.R, path));
        Found found = found(Target.of(original.weave()), SearchSpace.WHOLE.withStrokes(3));
        assertThat(found.with(original.sticking()).orElseThrow().additions()).isEmpty();
    }

    @Test
    void namesTheStepsWhereASoundSilencesAnother() {
        List<List<Strike>> steps = silence();
        steps.set(
                3,
                List.of(
                        Strike.plain(kit.find("hi-hat.open")),
                        Strike.plain(kit.find("hi-hat.closed"))));
        steps.set(7, steps.get(3));
        NoneCan none = noneCan(steps);
        assertThat(none.places()).containsExactly(new Place(1, 4), new Place(1, 8));
        assertThat(none.line())
                .isEqualTo(
                        "hi-hat.closed and hi-hat.open cannot sound together:"
                                + " bar 1 step 4, bar 1 step 8");
    }

    @Test
    void namesTheStepWhereTheLimbsDoNotSuffice() {
        List<List<Strike>> steps = silence();
        steps.set(
                5,
                List.of(
                        Strike.plain(kit.find("snare")),
                        Strike.plain(kit.find("ride")),
                        Strike.plain(kit.find("crash"))));
        assertThat(noneCan(steps).line())
                .isEqualTo(
                        "no four limbs can strike crash.edge and ride.bow and snare.head"
                                + " at one instant: bar 1 step 6");
    }

    @Test
    void namesEveryObstacleInOrder() {
        List<List<Strike>> steps = silence();
        List<String> cymbals = List.of("snare", "ride", "crash", "bass-drum");
        steps.set(9, cymbals.stream().map(s -> Strike.plain(kit.find(s))).toList());
        steps.set(
                2,
                List.of(
                        Strike.plain(kit.find("hi-hat.open")),
                        Strike.plain(kit.find("hi-hat.foot"))));
        NoneCan none = noneCan(steps);
        assertThat(none.places()).containsExactly(new Place(1, 3), new Place(1, 10));
        assertThat(none.line())
                .isEqualTo(
                        "hi-hat.foot and hi-hat.open cannot sound together: bar 1 step 3;"
                                + " and 1 more");
    }

    @Test
    void namesASmallestSetOfStepsThatCannotBeHadTogether() {
        List<List<Strike>> steps = silence();
        String[][] chords = {
            {"bass-drum", "snare"},
            {"bass-drum", "hi-hat.foot", "ride"},
            {"snare"},
            {"bass-drum"},
            {"hi-hat.foot"},
            {"bass-drum", "hi-hat.foot"},
        };
        for (int i = 0; i < chords.length; i++) {
            List<Strike> strikes = new ArrayList<>();
            for (String sound : chords[i]) {
                strikes.add(Strike.plain(kit.find(sound)));
            }
            steps.set(i, strikes);
        }
        Target target = new Target(kit, Grid.SIXTEENTHS, steps);
        SearchSpace narrow = SearchSpace.WHOLE.withMostAdditions(1);
        NoneCan none = (NoneCan) StickingSearch.search(target, narrow);
        for (int left = 0; left < none.places().size(); left++) {
            List<List<Strike>> fewer = silence();
            for (int i = 0; i < none.places().size(); i++) {
                int step = none.places().get(i).step() - 1;
                fewer.set(step, i == left ? List.of() : steps.get(step));
            }
            assertThat(StickingSearch.search(new Target(kit, Grid.SIXTEENTHS, fewer), narrow))
                    .isInstanceOf(Found.class);
        }
    }

    @Test
    void showsHowFarItIs() {
        Stopper watch = new Stopper(Integer.MAX_VALUE);
        StickingSearch.search(unplayable(), SearchSpace.WHOLE, watch);
        assertThat(watch.done).isNotEmpty();
        assertThat(watch.done).allMatch(part -> part > 0 && part <= 1);
        assertThat(watch.done).contains(1.0);
    }

    @Test
    void stopsWhereverItIsAskedToAndSaysSo() {
        Stopper whole = new Stopper(Integer.MAX_VALUE);
        StickingSearch.search(unplayable(), SearchSpace.WHOLE, whole);
        int asked = whole.asked;
        for (int after : new int[] {0, 1, asked / 2, asked - 1}) {
            Stopper stopper = new Stopper(after);
            assertThat(StickingSearch.search(unplayable(), SearchSpace.WHOLE, stopper))
                    .isEqualTo(new Stopped());
            assertThat(stopper.asked).isEqualTo(after + 1);
        }
    }

    @Test
    void aStoppedListGoesOnWhereItWas() {
        Target target = Target.of(plain("R-L-").weave());
        Found found = found(target, SearchSpace.WHOLE.withStrokes(4).withMostAdditions(1));
        Stopper stopper = new Stopper(0);
        Iterator<Answer> impatient = found.easiestFirst(stopper);
        List<Answer> seen = new ArrayList<>();
        impatient.forEachRemaining(seen::add);
        assertThat(seen).isNotEmpty().allMatch(answer -> answer.additions().isEmpty());
        stopper.after = Integer.MAX_VALUE;
        impatient.forEachRemaining(seen::add);
        assertThat(seen).isEqualTo(found.first(Integer.MAX_VALUE));
    }

    /**
     * Loud and soft at one instant takes a layer that has its hand to itself: one such step can be
     * had, with two no hand is left for the rest.
     */
    private Target unplayable() {
        List<List<Strike>> steps = silence();
        String[][] loudAndSoft = {
            {"snare", "ride"}, {"high-tom", "crash"}, {"floor-tom", "mid-tom"}
        };
        for (int i = 0; i < loudAndSoft.length; i++) {
            steps.set(
                    i,
                    List.of(
                            new Strike(kit.find(loudAndSoft[i][0]), Dynamic.ACCENT, Ornament.NONE),
                            new Strike(kit.find(loudAndSoft[i][1]), Dynamic.GHOST, Ornament.NONE)));
        }
        return new Target(kit, Grid.SIXTEENTHS, steps);
    }

    @Test
    void twoStepsThatWantAHandToThemselvesForbidEachOther() {
        NoneCan none = (NoneCan) StickingSearch.search(unplayable(), SearchSpace.WHOLE);
        assertThat(none.line())
                .isEqualTo(
                        "no sticking plays all of these steps with at most 3 additions:"
                                + " bar 1 step 2, bar 1 step 3");
    }

    private static final class Stopper implements SearchWatch {
        private final List<Double> done = new ArrayList<>();
        private int after;
        private int asked;

        Stopper(int after) {
            this.after = after;
        }

        @Override
        public void progress(int some, int all) {
            done.add((double) some / all);
        }

        @Override
        public boolean isCancelled() {
            asked++;
            return asked > after;
        }
    }

    @Test
    void refusesAStickingLongerThanTheGroove() {
        Target target = Target.of(plain("RLRL").weave());
        assertThatThrownBy(() -> StickingSearch.search(target, SearchSpace.WHOLE.withStrokes(17)))
                .hasMessage("17 strokes: the groove has only 16 steps");
        assertThatThrownBy(() -> SearchSpace.WHOLE.withMostAdditions(4))
                .hasMessage("4 additions: expected 0 to 3");
    }

    @Test
    void refusesATargetThatIsNoWholeBarOrStrikesTwice() {
        assertThatThrownBy(() -> new Target(kit, Grid.SIXTEENTHS, List.of(List.of())))
                .hasMessage("1 steps: expected 1 to 512 whole bars of 16 steps");
        List<List<Strike>> steps = silence();
        Strike snare = Strike.plain(kit.find("snare"));
        steps.set(2, List.of(snare, snare));
        assertThatThrownBy(() -> new Target(kit, Grid.SIXTEENTHS, steps))
                .hasMessage("bar 1 step 3: snare.head is struck twice");
    }

    private Recipe plain(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), kit);
    }

    private static List<List<Strike>> silence() {
        return new ArrayList<>(Collections.nCopies(16, List.of()));
    }

    private NoneCan noneCan(List<List<Strike>> steps) {
        return (NoneCan)
                StickingSearch.search(new Target(kit, Grid.SIXTEENTHS, steps), SearchSpace.WHOLE);
    }

    private static Found found(Target target, SearchSpace space) {
        SearchOutcome outcome = StickingSearch.search(target, space);
        assertThat(outcome).isInstanceOf(Found.class);
        return (Found) outcome;
    }

    static void assertProduces(Answer answer, Target target) {
        Groove groove = answer.recipe().weave();
        assertThat(groove.conflicts()).as("%s", answer).isEmpty();
        assertThat(Target.of(groove)).as("%s", answer).isEqualTo(target);
    }

    static List<Optional<Letter>> letters(Sticking sticking) {
        return sticking.strokes().stream()
                .map(stroke -> stroke.struck().map(Stroke.Struck::letter))
                .toList();
    }
}
