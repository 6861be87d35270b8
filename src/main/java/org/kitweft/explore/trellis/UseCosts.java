package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The least cost to complete a beginning that knows which surfaces it has struck: over the states
 * of {@link SurfaceUse}, worked out when asked for and remembered up to {@value #MOST_BYTES} bytes.
 *
 * <p>Exact, but for a loop in which some limb has not struck yet: from there the way back is taken
 * to the nearest of its surfaces, so that the answer is a bound from below. Not safe for use by
 * several threads.
 */
final class UseCosts {
    private static final long MOST_BYTES = 64L << 20;
    private static final long UNKNOWN = Long.MAX_VALUE;

    private final Plan plan;
    private final Priced priced;
    private final Chain joint;
    private final SurfaceUse use;

    /** For each limb of the chain its first stroke, and its place among that stroke's limbs. */
    private final int[][] first;

    private final LinkedHashMap<Seam, Rests> known = new LinkedHashMap<>(16, 0.75f, true);

    /**
     * What a beginning asks of the end of a loop; all ask the same without one.
     *
     * @param starts for each limb of the chain where it struck first; negative for nowhere yet
     * @param ends for each limb of the chain where it may strike last
     */
    private record Seam(List<Integer> starts, List<BitSet> ends) {}

    /** For each stroke and state before it the least cost to the end, with one seam. */
    private final class Rests {
        private final Seam seam;
        private final long[][] after = new long[plan.kinds.length][0];
        private long bytes;

        Rests(Seam seam) {
            this.seam = seam;
        }

        long least(int stroke, int state) {
            if (stroke == plan.kinds.length) {
                return last(state);
            }
            if (plan.limits.least() - use.different(state) > plan.kinds.length - stroke) {
                return Priced.NEVER;
            }
            if (state >= after[stroke].length) {
                grow(stroke, state);
            }
            long least = after[stroke][state];
            if (least == UNKNOWN) {
                least = find(stroke, state);
                after[stroke][state] = least;
            }
            return least;
        }

        private void grow(int stroke, int state) {
            int before = after[stroke].length;
            // States that other beginnings have found come in sight here too, and some more.
            int size = Math.max(state + state / 4 + 64, use.size());
            after[stroke] = Arrays.copyOf(after[stroke], size);
            Arrays.fill(after[stroke], before, size, UNKNOWN);
            bytes += (long) Long.BYTES * (size - before);
        }

        private long find(int stroke, int state) {
            Kind kind = plan.kinds[stroke];
            int[] limbs = kind.limbs();
            int[] from = new int[limbs.length];
            for (int slot = 0; slot < from.length; slot++) {
                from[slot] = use.surface(state, joint.dimension(limbs[slot]));
            }
            int[] row = use.steps(kind).from(state);
            long least = Priced.NEVER;
            for (int t = 0; t < row.length; t++) {
                if (row[t] != SurfaceUse.NONE) {
                    int surface = kind.targets()[t];
                    long price = priced.surfaces[stroke][surface];
                    for (int slot = 0; slot < from.length; slot++) {
                        price += priced.move(stroke, slot, from[slot], surface);
                    }
                    least = Math.min(least, price + least(stroke + 1, row[t]));
                }
            }
            return least;
        }

        private long last(int state) {
            if (!use.enough(state)) {
                return Priced.NEVER;
            }
            long price = 0;
            for (int d = 0; plan.limits.loop() && d < first.length; d++) {
                int end = use.surface(state, d);
                if (!seam.ends.get(d).get(end)) {
                    return Priced.NEVER;
                }
                price += back(d, end, seam.starts.get(d));
            }
            return price;
        }
    }

    /** A plan's costs; ask {@link #fits} before. */
    UseCosts(Plan plan, Priced priced) {
        this.plan = plan;
        this.priced = priced;
        joint = Chain.joint(plan);
        use = new SurfaceUse(plan, joint);
        first = joint.firsts();
    }

    /** Whether one beginning's costs take no more memory than there is. */
    static boolean fits(Plan plan) {
        double states = SurfaceUse.bound(plan, Chain.joint(plan));
        return plan.surfaces.size() <= SurfaceUse.MOST_SURFACES
                && states * plan.kinds.length * Long.BYTES <= MOST_BYTES;
    }

    /** What it costs a limb to come back to its first surface; the nearest if it has none yet. */
    private long back(int d, int end, int start) {
        if (start >= 0) {
            return priced.move(first[d][0], first[d][1], end, start);
        }
        long least = Priced.NEVER;
        for (int to : plan.kinds[first[d][0]].targets()) {
            least = Math.min(least, priced.move(first[d][0], first[d][1], end, to));
        }
        return least;
    }

    /**
     * The least cost to complete a beginning; {@link Priced#NEVER} or near it if nothing does.
     *
     * @param node the beginning
     * @param starts by limb where it struck first; negative for nowhere yet
     * @param used the surfaces it has struck
     */
    long after(TableNode node, int[] starts, BitSet used) {
        int[] places = new int[starts.length];
        Arrays.setAll(places, node::place);
        int state = use.state(places, used.stream().boxed().toList());
        return state == SurfaceUse.NONE
                ? Priced.NEVER
                : rests(seam(node, starts)).least(node.depth, state);
    }

    /** Whether an answer costs next to nothing: others that ask the same of the end were given. */
    boolean isNear(TableNode node, int[] starts) {
        return known.containsKey(seam(node, starts));
    }

    private Seam seam(TableNode node, int[] starts) {
        if (!plan.limits.loop()) {
            return new Seam(List.of(), List.of());
        }
        List<Integer> mine = new ArrayList<>();
        List<BitSet> ends = new ArrayList<>();
        for (int limb : joint.limbs) {
            mine.add(starts[limb]);
            ends.add(node.ends(limb));
        }
        return new Seam(mine, ends);
    }

    private Rests rests(Seam seam) {
        Rests mine = known.get(seam);
        if (mine == null) {
            long bytes = 0;
            for (Rests each : known.values()) {
                bytes += each.bytes;
            }
            Iterator<Map.Entry<Seam, Rests>> eldest = known.entrySet().iterator();
            while (bytes > MOST_BYTES) {
                bytes -= eldest.next().getValue().bytes;
                eldest.remove();
            }
            mine = new Rests(seam);
            known.put(seam, mine);
        }
        return mine;
    }
}
