package org.kitweft.explore.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.search.SearchWatch;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
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

class LadderTest {
    private static final int MOST_TRIED = 6;
    private final Kit kit = BuiltInKits.load("five-piece");

    @Test
    void leadsFromOneSurfaceToTheRecipeOneChangeAtATime() {
        Recipe goal = goal();
        Ladder ladder = Ladder.to(goal);
        assertThat(ladder.rungs().get(0).recipe().voicing()).isEqualTo(Voicing.plain(kit));
        assertThat(ladder.rungs().get(0).recipe().sticking().text()).isEqualTo("RLRR LRLL");
        assertThat(last(ladder).recipe()).isEqualTo(goal);
        assertThat(ladder.rungs().stream().skip(1).map(Rung::change))
                .containsExactlyInAnyOrder(
                        "R goes to ride.bow",
                        "accents of R go to crash.edge",
                        "the right foot strikes bass-drum.head with accents of R",
                        "stroke 4 goes to floor-tom.head",
                        "the left foot plays a layer, hi-hat.foot@2: - x",
                        "accents");
        assertThat(ladder.exact()).isTrue();
    }

    @Test
    void everyRungCanBePlayedAndSoundsOtherwiseThanTheOneBefore() {
        List<Rung> rungs = Ladder.to(goal()).rungs();
        for (int i = 0; i < rungs.size(); i++) {
            assertThat(rungs.get(i).recipe().weave().conflicts()).isEmpty();
            if (i > 0) {
                assertThat(rungs.get(i).recipe().weave().hits())
                        .isNotEqualTo(rungs.get(i - 1).recipe().weave().hits());
            }
        }
    }

    /** All orders of up to six changes, one by one: none is better than the ladder's. */
    @Test
    void noOtherOrderIsBetter() {
        SplittableRandom random = new SplittableRandom(11);
        int compared = 0;
        while (compared < 20) {
            Recipe goal = randomGoal(random);
            List<Change> changes = Changes.to(goal);
            if (changes.isEmpty() || changes.size() > MOST_TRIED) {
                continue;
            }
            List<Integer> counting = new ArrayList<>();
            for (int i = 0; i < changes.size(); i++) {
                counting.add(i);
            }
            Orders orders = new Orders(Changes.start(goal), changes, counting, SearchWatch.NONE);
            Orders.Cost best =
                    permutations(counting).stream()
                            .map(orders::costOf)
                            .flatMap(Optional::stream)
                            .min(Orders.Cost.BY_ALL)
                            .orElseThrow();
            assertThat(orders.costOf(orders.best())).as("%s", goal).contains(best);
            compared++;
        }
    }

    @Test
    void theLadderReachesEveryRandomGoal() {
        SplittableRandom random = new SplittableRandom(12);
        for (int round = 0; round < 60; round++) {
            Recipe goal = randomGoal(random);
            goal = goal.with(goal.voicing().briefly(goal.sticking()));
            Ladder ladder = Ladder.to(goal);
            assertThat(last(ladder).recipe()).isEqualTo(goal);
            int most = Changes.to(goal).size() + 1;
            assertThat(ladder.rungs()).hasSizeBetween(1, most);
        }
    }

    @Test
    void beyondTheExactSizeItStillReachesTheGoalWithoutConflict() {
        Recipe goal = plain("RLRL RLRL RLRL RLRL");
        for (int stroke = 0; stroke < 16; stroke++) {
            String sound = stroke % 4 < 2 ? "floor-tom" : "high-tom";
            goal = goal.with(goal.voicing().withStroke(stroke, kit.find(sound)));
        }
        Ladder ladder = Ladder.to(goal);
        assertThat(ladder.exact()).isFalse();
        assertThat(ladder.rungs()).hasSize(17);
        assertThat(last(ladder).recipe()).isEqualTo(goal);
        assertThat(ladder.rungs()).allMatch(rung -> rung.recipe().weave().conflicts().isEmpty());
    }

    @Test
    void showsProgressToItsEnd() {
        List<Integer> shown = new ArrayList<>();
        Ladder.to(goal(), watch(shown, Integer.MAX_VALUE));
        assertThat(shown).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
    }

    /** Whenever it is stopped there is a ladder, each change once and nothing before its need. */
    @Test
    void stoppedItStillReachesTheGoal() {
        for (int after = 0; after < 12; after++) {
            Ladder ladder = Ladder.to(goal(), watch(new ArrayList<>(), after));
            assertThat(ladder.exact()).isFalse();
            assertThat(last(ladder).recipe()).isEqualTo(goal());
            assertThat(ladder.rungs().stream().map(Rung::change))
                    .hasSize(7)
                    .doesNotHaveDuplicates();
        }
    }

    @Test
    void stoppedAfterTheFirstSweepItRisesNoMoreThanItMust() {
        Ladder best = Ladder.to(goal());
        Ladder stopped = Ladder.to(goal(), watch(new ArrayList<>(), 6));
        assertThat(stopped.largestRise()).isEqualTo(best.largestRise());
    }

    private static SearchWatch watch(List<Integer> shown, int stopAfter) {
        return new SearchWatch() {
            @Override
            public void progress(int done, int all) {
                shown.add(done);
                assertThat(all).isEqualTo(12);
            }

            @Override
            public boolean isCancelled() {
                return shown.size() >= stopAfter;
            }
        };
    }

    @Test
    void aPlainRecipeIsItsOwnOnlyRung() {
        Recipe plain = plain("RLRR LRLL");
        assertThat(Ladder.to(plain).rungs()).extracting(Rung::recipe).containsExactly(plain);
        assertThat(Ladder.to(plain).largestRise()).isZero();
    }

    @Test
    void aLetterThatBecomesSilentIsOneChangeWhateverElseItHas() {
        Recipe plain = plain("RLRR LRLL");
        LetterVoicing silent =
                LetterVoicing.on(Limb.LEFT_HAND, List.of(kit.find("crash"))).withTacet(true);
        Recipe goal = plain.with(plain.voicing().with(Letter.L, silent));
        assertThat(Ladder.to(goal).rungs())
                .extracting(Rung::change)
                .containsExactly("the sticking on one surface", "L is tacet");
    }

    @Test
    void aDoublingByTheLettersFormerLimbWaitsForTheHandover() {
        Recipe plain = plain("RLRR LRLL");
        LetterVoicing handed =
                LetterVoicing.on(Limb.RIGHT_FOOT, List.of(kit.find("bass-drum")))
                        .withDoublings(
                                List.of(new Doubling(Limb.RIGHT_HAND, kit.find("ride"), false)));
        Recipe goal = plain.with(plain.voicing().with(Letter.R, handed));
        assertThat(Ladder.to(goal).rungs())
                .extracting(Rung::change)
                .containsExactly(
                        "the sticking on one surface",
                        "the right foot plays R",
                        "the right hand strikes ride.bow with R");
    }

    @Test
    void refusesALadderTooLongToClimb() {
        Recipe goal = plain("R").with(Grid.SIXTEENTHS);
        goal = goal.with(Sticking.parse("[RL]*40"));
        for (int stroke = 0; stroke < 80; stroke++) {
            String sound = stroke % 4 < 2 ? "ride" : "crash";
            goal = goal.with(goal.voicing().withStroke(stroke, kit.find(sound)));
        }
        Recipe high = goal;
        assertThatThrownBy(() -> Ladder.to(high))
                .hasMessage("a ladder has at most 64 changes, this recipe needs 80");
    }

    @Test
    void aLetterThatGoesElsewhereAsAWholeIsOneChange() {
        Recipe goal = plain("RLRR LRLL");
        for (int stroke : new int[] {0, 2, 3, 5}) {
            goal = goal.with(goal.voicing().withStroke(stroke, kit.find("ride")));
        }
        assertThat(Ladder.to(goal).rungs().stream().map(Rung::change))
                .containsExactly("the sticking on one surface", "R goes to ride.bow");
    }

    private Recipe goal() {
        Recipe plain = plain(">RLRR >LRLL");
        LetterVoicing right =
                new LetterVoicing(
                        Limb.RIGHT_HAND,
                        List.of(kit.find("ride")),
                        List.of(kit.find("crash")),
                        List.of(),
                        List.of(new Doubling(Limb.RIGHT_FOOT, kit.find("bass-drum"), true)),
                        false);
        Layer layer = new Layer(Limb.LEFT_FOOT, kit.find("hi-hat.foot"), 2, Figure.parse("- x"));
        return plain.with(
                plain.voicing()
                        .with(Letter.R, right)
                        .withStroke(3, kit.find("floor-tom"))
                        .withLayers(List.of(layer)));
    }

    private Recipe randomGoal(SplittableRandom random) {
        List<String> stickings = List.of("RLRRLRLL", ">RLK(R)LRBL", "(R)-lRLK>RLz", "RLLRRLKH");
        Recipe goal = plain(stickings.get(random.nextInt(stickings.size())));
        Voicing voicing = goal.voicing();
        for (Letter letter : List.of(Letter.R, Letter.L)) {
            Limb limb =
                    random.nextInt(4) == 0
                            ? one(random, List.of(Limb.values()))
                            : Voicing.limbOf(letter, kit);
            List<SoundName> able = kit.soundsFor(limb);
            LetterVoicing voiced =
                    LetterVoicing.on(limb, List.of(one(random, able), one(random, able)));
            if (random.nextInt(3) == 0) {
                voiced = voiced.withAccents(List.of(one(random, able)));
            }
            if (random.nextInt(3) == 0 && limb != Limb.RIGHT_FOOT) {
                voiced =
                        voiced.withDoublings(
                                List.of(
                                        new Doubling(
                                                Limb.RIGHT_FOOT,
                                                kit.find("bass-drum"),
                                                random.nextBoolean())));
            }
            voicing = voicing.with(letter, voiced.withTacet(random.nextInt(8) == 0));
        }
        TreeMap<Integer, SoundName> strokes = new TreeMap<>();
        if (random.nextBoolean()) {
            strokes.put(random.nextInt(8), one(random, kit.soundsFor(Limb.RIGHT_HAND)));
        }
        return goal.with(voicing.withStrokes(strokes)).withBars(OptionalInt.of(1));
    }

    private static <T> T one(SplittableRandom random, List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private static List<List<Integer>> permutations(List<Integer> items) {
        if (items.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Integer>> all = new ArrayList<>();
        for (Integer first : items) {
            List<Integer> rest = new ArrayList<>(items);
            rest.remove(first);
            for (List<Integer> tail : permutations(rest)) {
                List<Integer> order = new ArrayList<>(List.of(first));
                order.addAll(tail);
                all.add(order);
            }
        }
        return all;
    }

    private static Rung last(Ladder ladder) {
        return ladder.rungs().get(ladder.rungs().size() - 1);
    }

    private Recipe plain(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), kit);
    }
}
