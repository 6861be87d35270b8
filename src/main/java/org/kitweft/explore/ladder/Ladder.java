package org.kitweft.explore.ladder;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.search.SearchWatch;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Recipe;

/**
 * From the sticking on one surface to a chosen recipe, each rung one change above the one before: a
 * letter handed over to another limb, a letter's path, the place of its accents or ghosts, a
 * doubling, a letter tacet, one single stroke, one layer, the accents of the sticking, its ghosts,
 * its flams.
 *
 * <p>There are as many rungs as there are changes that count, and one more: no fewer will do. Among
 * their orders the ladder takes one with the fewest rungs that have a conflict or bring nothing
 * new, then the smallest of the largest rises of difficulty, then the smallest sum of rises. Up to
 * {@value Orders#MOST_EXACT} changes this is exact, by dynamic programming over all sets of
 * changes; beyond that, up to {@value #MOST_CHANGES}, a beam search keeps the {@value Orders#BEAM}
 * best sets of each size, and the ladder may rise a little more than it must. How hard a rung is
 * stands in {@link Difficulty}.
 *
 * <p>What differs but makes no hit different at the goal (a path of a letter that does not occur)
 * is there from the first rung, or comes with the last.
 *
 * @param rungs the plainest first, the chosen recipe last; at least one
 * @param exact whether no other order rises less
 */
public record Ladder(List<Rung> rungs, boolean exact) {
    /** The most changes a ladder is made for. */
    public static final int MOST_CHANGES = 64;

    private static final String START = "the sticking on one surface";

    public Ladder {
        rungs = List.copyOf(rungs);
        if (rungs.isEmpty()) {
            throw new IllegalArgumentException("a ladder has at least one rung");
        }
    }

    /** The ladder to a recipe, with nobody looking on. */
    public static Ladder to(Recipe goal) {
        return to(goal, SearchWatch.NONE);
    }

    /**
     * The ladder to a recipe.
     *
     * @param watch is shown how many rungs have been looked for in all, and may stop that; the
     *     changes not yet in order then come as they are listed, and the ladder is not exact
     * @throws IllegalArgumentException if more than {@value #MOST_CHANGES} things differ
     */
    public static Ladder to(Recipe goal, SearchWatch watch) {
        // A letter that goes elsewhere as a whole is one change, however its strokes are named.
        return toBrief(goal.with(goal.voicing().briefly(goal.sticking())), watch);
    }

    private static Ladder toBrief(Recipe goal, SearchWatch watch) {
        Recipe start = Changes.start(goal);
        List<Change> changes = Changes.to(goal);
        if (changes.size() > MOST_CHANGES) {
            throw new IllegalArgumentException(
                    "a ladder has at most %d changes, this recipe needs %d"
                            .formatted(MOST_CHANGES, changes.size()));
        }
        List<Integer> counting = counting(start, changes);
        if (counting.isEmpty()) {
            return new Ladder(List.of(rung(goal, START)), true);
        }
        Orders orders = new Orders(start, changes, counting, watch);
        List<Rung> rungs = new ArrayList<>(List.of(rung(start, START)));
        List<Integer> made = new ArrayList<>();
        for (int change : orders.best()) {
            made.add(change);
            Recipe recipe =
                    made.size() == counting.size() ? goal : Orders.with(start, changes, made);
            rungs.add(rung(recipe, changes.get(change).words()));
        }
        return new Ladder(rungs, orders.exact());
    }

    private static Rung rung(Recipe recipe, String change) {
        return new Rung(recipe, change, Difficulty.of(recipe.weave()));
    }

    /** The changes without which the goal would sound, or be played, otherwise. */
    private static List<Integer> counting(Recipe start, List<Change> changes) {
        List<Integer> counting = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            counting.add(i);
        }
        List<Hit> hits = Orders.with(start, changes, counting).weave().hits();
        for (int change : List.copyOf(counting)) {
            List<Integer> without = new ArrayList<>(counting);
            without.remove((Integer) change);
            boolean needed =
                    without.stream()
                            .anyMatch(other -> changes.get(other).needs().orElse(-1) == change);
            if (!needed && Orders.with(start, changes, without).weave().hits().equals(hits)) {
                counting = without;
            }
        }
        return counting;
    }

    /** The largest rise of difficulty from one rung to the next, in points a bar; 0 if none. */
    public double largestRise() {
        long largest = 0;
        for (int i = 1; i < rungs.size(); i++) {
            largest =
                    Math.max(
                            largest,
                            rungs.get(i).difficulty().total()
                                    - rungs.get(i - 1).difficulty().total());
        }
        return largest / 1000.0;
    }
}
