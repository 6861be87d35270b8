package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import org.kitweft.kit.Limb;

/**
 * Variations from the cheapest on; equal costs in the order of the variations. Lazy: each next one
 * costs little more than its own strokes.
 *
 * <p>Best-first search over beginnings. What a beginning still costs is known exactly from {@link
 * LeastCosts}, except for the rule on different surfaces: for that a bound from below is used, the
 * cheapest entries to surfaces still missing, so that the order stays right while more beginnings
 * are looked at. Where that finds nothing for a while, {@link UseCosts} are asked, which take
 * longer to make and know that rule too.
 */
final class BestSearch implements Iterator<int[]> {
    /** So many beginnings are looked at in the time that it takes to make better costs. */
    static final int PATIENCE = 1000;

    private final Plan plan;
    private final List<Chain> chains;
    private final Priced priced;
    private final Map<BitSet, LeastCosts[]> leastCosts = new HashMap<>();
    private final BitSet everywhere = new BitSet();
    private final long[] entries;
    private final PriorityQueue<Beginning> queue = new PriorityQueue<>();
    private final BooleanSupplier stopped;
    private final int patience;

    /** Whether a rule on different surfaces asks for better costs, and they can be made. */
    private final boolean counts;

    /** Beginnings looked at since the last variation was found. */
    private int looked;

    /** Costs that know the rule on different surfaces; none as long as they are not needed. */
    private Optional<UseCosts> useCosts = Optional.empty();

    /** A beginning, in the order in which beginnings are looked at. */
    private static final class Beginning implements Comparable<Beginning> {
        /** The least that any of its completions costs, or less. */
        private final long estimate;

        /** What it costs itself, without the way back in a loop. */
        private final long paid;

        private final int[] options;
        private final TableNode node;
        private final int[] starts;
        private final BitSet used;

        /** Whether the estimate is the best there is. */
        private final boolean sharp;

        Beginning(
                long estimate,
                long paid,
                int[] options,
                TableNode node,
                int[] starts,
                BitSet used,
                boolean sharp) {
            this.estimate = estimate;
            this.paid = paid;
            this.options = options;
            this.node = node;
            this.starts = starts;
            this.used = used;
            this.sharp = sharp;
        }

        /** With a better estimate. */
        Beginning sharpened(long rest) {
            long better = Math.max(estimate, paid + rest);
            return new Beginning(better, paid, options, node, starts, used, true);
        }

        @Override
        public int compareTo(Beginning other) {
            int order = Long.compare(estimate, other.estimate);
            return order != 0 ? order : Arrays.compare(options, other.options);
        }
    }

    /**
     * @param family the plan's tables without the rule on different surfaces
     * @param stopped whether to end before the next variation
     * @param patience beginnings to look at before better costs are made, {@value #PATIENCE} but
     *     for tests
     */
    BestSearch(Family family, Cost cost, BooleanSupplier stopped, int patience) {
        this.stopped = stopped;
        this.patience = patience;
        plan = family.plan;
        chains = family.chains;
        priced = new Priced(plan, cost);
        counts =
                (plan.limits.least() > 1 || plan.limits.most() < plan.surfaces.size())
                        && UseCosts.fits(plan);
        everywhere.set(0, plan.surfaces.size());
        entries = new long[plan.surfaces.size()];
        for (int s = 0; s < entries.length; s++) {
            entries[s] = priced.entry(s);
        }
        int[] starts = new int[Limb.values().length];
        Arrays.fill(starts, -1);
        add(-Priced.NEVER, 0, new int[0], TableNode.root(family), starts, new BitSet());
    }

    private void add(
            long least, long paid, int[] options, TableNode node, int[] starts, BitSet used) {
        if (!node.isAlive() || used.cardinality() > plan.limits.most()) {
            return;
        }
        long rest = Math.max(rest(node, starts, used), missing(node, used));
        if (rest >= Priced.NEVER / 2) {
            return;
        }
        Beginning added =
                new Beginning(
                        Math.max(least, paid + rest), paid, options, node, starts, used, false);
        if (useCosts.isPresent() && useCosts.get().isNear(node, starts)) {
            addSharp(added, useCosts.get());
        } else {
            queue.add(added);
        }
    }

    private void addSharp(Beginning beginning, UseCosts costs) {
        long rest = costs.after(beginning.node, beginning.starts, beginning.used);
        if (rest < Priced.NEVER / 2) {
            queue.add(beginning.sharpened(rest));
        }
    }

    private long rest(TableNode node, int[] starts, BitSet used) {
        boolean full = used.cardinality() == plan.limits.most();
        long rest = 0;
        for (LeastCosts costs :
                leastCosts.computeIfAbsent(full ? used : everywhere, this::leastCosts)) {
            rest = Math.min(Priced.NEVER, rest + costs.after(node, starts));
        }
        return rest;
    }

    private LeastCosts[] leastCosts(BitSet surfaces) {
        LeastCosts[] all = new LeastCosts[chains.size()];
        for (int c = 0; c < all.length; c++) {
            all[c] = new LeastCosts(plan, priced, new Layout(plan, chains.get(c), surfaces), c);
        }
        return all;
    }

    /** What the surfaces still missing cost at least: each limb's first may come free. */
    private long missing(TableNode node, BitSet used) {
        int missing = plan.limits.least() - used.cardinality();
        if (missing > plan.kinds.length - node.depth) {
            return Priced.NEVER;
        }
        int free = 0;
        for (Chain chain : chains) {
            for (int limb : chain.limbs) {
                free += node.place(limb) < 0 ? 1 : 0;
            }
        }
        if (missing <= free || priced.anyNegative) {
            return priced.anyNegative ? -Priced.NEVER : 0;
        }
        BitSet others = (BitSet) everywhere.clone();
        others.andNot(used);
        return others.stream().mapToLong(s -> entries[s]).sorted().limit(missing - free).sum();
    }

    @Override
    public boolean hasNext() {
        while (!queue.isEmpty() && queue.peek().options.length < plan.kinds.length) {
            if (stopped.getAsBoolean()) {
                queue.clear();
                return false;
            }
            if (counts && useCosts.isEmpty() && looked++ >= patience) {
                useCosts = Optional.of(new UseCosts(plan, priced));
            }
            Beginning first = queue.remove();
            if (useCosts.isPresent() && !first.sharp) {
                addSharp(first, useCosts.get());
            } else {
                extend(first);
            }
        }
        return !queue.isEmpty();
    }

    @Override
    public int[] next() {
        if (!hasNext()) {
            throw new NoSuchElementException("there are no more variations");
        }
        looked = 0;
        return queue.remove().options;
    }

    private void extend(Beginning beginning) {
        int stroke = beginning.options.length;
        Kind kind = plan.kinds[stroke];
        for (int o = 0; o < plan.surfaceOf[stroke].length; o++) {
            int surface = plan.surfaceOf[stroke][o];
            long paid = beginning.paid + priced.options[stroke][o];
            int[] starts = beginning.starts.clone();
            for (int slot = 0; slot < kind.limbs().length; slot++) {
                int limb = kind.limbs()[slot];
                int from = beginning.node.place(limb);
                paid += priced.move(stroke, slot, from, surface);
                starts[limb] = from < 0 ? surface : starts[limb];
            }
            int[] options = Arrays.copyOf(beginning.options, stroke + 1);
            options[stroke] = o;
            BitSet used = (BitSet) beginning.used.clone();
            used.set(surface);
            add(beginning.estimate, paid, options, beginning.node.extended(surface), starts, used);
        }
    }
}
