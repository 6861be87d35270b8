package org.kitweft.explore.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.search.SearchWatch;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Recipe;

/** The orders in which changes can be made, and the best of them. Sets of changes are bits. */
final class Orders {
    /** Up to so many changes all sets are looked at. */
    static final int MOST_EXACT = 12;

    /** Beyond that, so many sets of each size. */
    static final int BEAM = 24;

    private final Recipe start;
    private final List<Change> changes;
    private final List<Integer> counting;
    private final SearchWatch watch;
    private boolean stopped;
    private int sizesDone;
    private final Map<Long, Rest> rests = new HashMap<>();

    /** What is known of a set of changes: a place to rest between two of them. */
    private record Rest(long difficulty, boolean conflict, List<Hit> hits) {}

    /**
     * What an order, or the start of one, costs.
     *
     * @param bad rungs that have a conflict or bring nothing new
     * @param largest the largest rise
     * @param sum of the rises
     */
    record Cost(int bad, long largest, long sum) {
        static final Cost NONE = new Cost(0, 0, 0);

        static final Comparator<Cost> BY_LARGEST =
                Comparator.comparingInt(Cost::bad).thenComparingLong(Cost::largest);

        static final Comparator<Cost> BY_SUM =
                Comparator.comparingInt(Cost::bad).thenComparingLong(Cost::sum);

        static final Comparator<Cost> BY_ALL = BY_LARGEST.thenComparingLong(Cost::sum);

        Cost plus(Cost step) {
            return new Cost(bad + step.bad, Math.max(largest, step.largest), sum + step.sum);
        }
    }

    private record Begun(long set, Cost cost, Optional<Begun> before, int last) {
        List<Integer> order() {
            List<Integer> order = new ArrayList<>(before.map(Begun::order).orElse(List.of()));
            if (last >= 0) {
                order.add(last);
            }
            return order;
        }
    }

    /**
     * @param counting the numbers of the changes that are put in order
     * @param watch is shown how far it is, and may stop it
     */
    Orders(Recipe start, List<Change> changes, List<Integer> counting, SearchWatch watch) {
        this.start = start;
        this.changes = changes;
        this.counting = List.copyOf(counting);
        this.watch = watch;
    }

    /** The recipe once some changes are made, in whatever order. */
    static Recipe with(Recipe start, List<Change> changes, List<Integer> made) {
        Recipe recipe = start;
        for (int i = 0; i < changes.size(); i++) {
            if (made.contains(i)) {
                recipe = changes.get(i).apply().apply(recipe);
            }
        }
        return recipe;
    }

    /** Whether no order is better than {@link #best()}; known once that has been asked for. */
    boolean exact() {
        return isSmall() && !stopped;
    }

    private boolean isSmall() {
        return counting.size() <= MOST_EXACT;
    }

    /** The numbers of the changes in the best order; the best that is known if it is stopped. */
    List<Integer> best() {
        if (!isSmall()) {
            return sweep(Cost.BY_ALL, Long.MAX_VALUE, BEAM).order();
        }
        // First how little the largest rise can be, then the smallest sum under it: taken at once,
        // a beginning with a smaller largest rise could hide one that ends with a smaller sum.
        Begun lowest = sweep(Cost.BY_LARGEST, Long.MAX_VALUE, Integer.MAX_VALUE);
        if (stopped) {
            return lowest.order();
        }
        Begun best = sweep(Cost.BY_SUM, lowest.cost.largest, Integer.MAX_VALUE);
        return stopped ? lowest.order() : best.order();
    }

    /** Size by size through the sets, the best way to each; steps above a rise are left out. */
    private Begun sweep(Comparator<Cost> better, long highestRise, int beam) {
        List<Begun> stage = List.of(new Begun(0, Cost.NONE, Optional.empty(), -1));
        for (int size = 0; size < counting.size(); size++) {
            Map<Long, Begun> next = new LinkedHashMap<>();
            for (Begun begun : stage) {
                if (stopped || watch.isCancelled()) {
                    stopped = true;
                    return finished(stage.get(0));
                }
                for (Begun more : onward(begun, highestRise)) {
                    next.merge(
                            more.set,
                            more,
                            (one, other) -> better.compare(other.cost, one.cost) < 0 ? other : one);
                }
            }
            stage =
                    next.values().stream()
                            .sorted(Comparator.comparing(Begun::cost, better))
                            .limit(beam)
                            .toList();
            sizesDone++;
            watch.progress(sizesDone, (isSmall() ? 2 : 1) * counting.size());
        }
        return stage.get(0);
    }

    private List<Begun> onward(Begun begun, long highestRise) {
        List<Begun> onward = new ArrayList<>();
        for (int i = 0; i < counting.size(); i++) {
            long set = begun.set | 1L << i;
            if (set != begun.set && isAllowed(begun.set, i)) {
                Cost step = step(begun.set, set);
                if (step.largest <= highestRise) {
                    onward.add(
                            new Begun(
                                    set,
                                    begun.cost.plus(step),
                                    Optional.of(begun),
                                    counting.get(i)));
                }
            }
        }
        return onward;
    }

    /** The changes that are left, as they are listed; each needs only some that stand before it. */
    private Begun finished(Begun begun) {
        Begun end = begun;
        for (int i = 0; i < counting.size(); i++) {
            long set = end.set | 1L << i;
            if (set != end.set) {
                end = new Begun(set, end.cost, Optional.of(end), counting.get(i));
            }
        }
        return end;
    }

    private boolean isAllowed(long set, int index) {
        int needs = changes.get(counting.get(index)).needs().orElse(-1);
        int at = counting.indexOf(needs);
        return at < 0 || (set & (1L << at)) != 0;
    }

    private Cost step(long from, long to) {
        Rest before = rest(from);
        Rest after = rest(to);
        long rise = Math.max(0, after.difficulty - before.difficulty);
        int bad = (after.conflict ? 1 : 0) + (after.hits.equals(before.hits) ? 1 : 0);
        return new Cost(bad, rise, rise);
    }

    private Rest rest(long set) {
        return rests.computeIfAbsent(
                set,
                s -> {
                    List<Integer> made = new ArrayList<>();
                    for (int i = 0; i < counting.size(); i++) {
                        if ((s & (1L << i)) != 0) {
                            made.add(counting.get(i));
                        }
                    }
                    Groove groove = with(start, changes, made).weave();
                    return new Rest(
                            Difficulty.of(groove).total(),
                            !groove.conflicts().isEmpty(),
                            groove.hits());
                });
    }

    /** The cost of one whole order, for tests that go through all of them. */
    Optional<Cost> costOf(List<Integer> order) {
        Cost cost = Cost.NONE;
        long set = 0;
        for (int change : order) {
            int index = counting.indexOf(change);
            if (!isAllowed(set, index)) {
                return Optional.empty();
            }
            cost = cost.plus(step(set, set | 1L << index));
            set |= 1L << index;
        }
        return Optional.of(cost);
    }
}
