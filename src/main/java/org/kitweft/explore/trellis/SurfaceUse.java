package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where all limbs stand, or that they have not struck yet, and which surfaces have been struck:
 * states that keep track of different surfaces, numbered as they are found, and the steps between
 * them. States that break a rule do not exist.
 *
 * <p>Once no more surfaces can be too many and there are enough, nobody asks which: all are taken
 * as struck. Not safe for use by several threads.
 */
final class SurfaceUse {
    /** The number that stands for no state. */
    static final int NONE = -1;

    /** Surfaces are bits of a long. */
    static final int MOST_SURFACES = 62;

    final Plan plan;
    final Chain chain;

    /** Whether too many surfaces can be struck. */
    private final boolean limited;

    private final long all;

    /** For each limb the surfaces it may strike. */
    private final long[] reach;

    private final Map<Long, Used> known = new HashMap<>();
    private final List<Used> usedOf = new ArrayList<>();
    private int[] codes = new int[64];
    private final Map<Kind, Steps> steps = new HashMap<>();

    /** States with one set of used surfaces. */
    private final class Used {
        private final long struck;
        private final int[][] surfaces;
        private final int[][] places;
        private final int[] strides;
        private final int[] numbers;
        private final @Nullable Used[] next;

        Used(long struck) {
            this.struck = struck;
            int m = plan.surfaces.size();
            int limbs = chain.limbs.length;
            surfaces = new int[limbs][];
            places = new int[limbs][m];
            strides = new int[limbs];
            int count = 1;
            for (int d = limbs - 1; d >= 0; d--) {
                long mine = struck & reach[d];
                surfaces[d] = new int[Long.bitCount(mine)];
                for (int i = 0; i < surfaces[d].length; i++) {
                    surfaces[d][i] = Long.numberOfTrailingZeros(mine);
                    places[d][surfaces[d][i]] = 1 + i;
                    mine &= mine - 1;
                }
                strides[d] = count;
                count *= 1 + surfaces[d].length;
            }
            numbers = new int[count];
            Arrays.fill(numbers, NONE);
            next = new @Nullable Used[m];
        }

        /** With one more surface struck; null where that would be one too many. */
        @Nullable Used with(int surface) {
            Used more = next[surface];
            if (more == null) {
                more = used(struck | 1L << surface);
                next[surface] = more;
            }
            return more;
        }

        /** The surface a limb stands on; negative if nowhere. */
        int surface(int code, int d) {
            int place = code / strides[d] % (1 + surfaces[d].length);
            return place == 0 ? -1 : surfaces[d][place - 1];
        }
    }

    SurfaceUse(Plan plan, Chain chain) {
        this.plan = plan;
        this.chain = chain;
        int m = plan.surfaces.size();
        limited = isLimited(plan);
        all = (1L << m) - 1;
        reach = new long[chain.limbs.length];
        for (int d = 0; d < reach.length; d++) {
            for (int surface : chain.reach[d].stream().toArray()) {
                reach[d] |= 1L << surface;
            }
        }
    }

    /**
     * Where enough different surfaces are asked for, who keeps track of a most of them too has many
     * more states, and the cheapest seldom come near it.
     */
    private static boolean isLimited(Plan plan) {
        return plan.limits.least() <= 1 && plan.limits.most() < plan.surfaces.size();
    }

    /** An upper bound of how many states there are that can follow one of them. */
    static double bound(Plan plan, Chain chain) {
        int m = plan.surfaces.size();
        int most = Math.min(isLimited(plan) ? plan.limits.most() : plan.limits.least(), m);
        double sum = 0;
        double sets = 1;
        for (int k = 0; k <= most; k++) {
            double places = 1;
            for (int d = 0; d < chain.limbs.length; d++) {
                places *= Math.min(k, chain.reach[d].cardinality()) + 1;
            }
            sum += sets * places;
            sets *= (double) (m - k) / (k + 1);
        }
        return sum;
    }

    private @Nullable Used used(long struck) {
        int different = Long.bitCount(struck);
        if (limited && different > plan.limits.most()) {
            return null;
        }
        boolean enough = !limited && different >= plan.limits.least();
        return known.computeIfAbsent(enough ? all : struck, Used::new);
    }

    /** How many states have been found. */
    int size() {
        return usedOf.size();
    }

    /** How many surfaces have been struck in a state; all, where nobody asks any more. */
    int different(int state) {
        return Long.bitCount(usedOf.get(state).struck);
    }

    /** Whether a variation may end with as many surfaces as a state's. */
    boolean enough(int state) {
        return different(state) >= plan.limits.least();
    }

    /** The surface a limb of the chain stands on in a state; negative if nowhere. */
    int surface(int state, int d) {
        return usedOf.get(state).surface(codes[state], d);
    }

    /**
     * The state of a beginning; {@link #NONE} if it has too many surfaces.
     *
     * @param places by limb where it stands; negative for nowhere
     * @param struck the surfaces struck so far
     */
    int state(int[] places, Iterable<Integer> struck) {
        long bits = 0;
        for (int surface : struck) {
            bits |= 1L << surface;
        }
        Used used = used(bits);
        if (used == null) {
            return NONE;
        }
        int code = 0;
        for (int d = 0; d < chain.limbs.length; d++) {
            int at = places[chain.limbs[d]];
            code += at < 0 ? 0 : used.places[d][at] * used.strides[d];
        }
        return number(used, code);
    }

    private int number(Used used, int code) {
        int number = used.numbers[code];
        if (number == NONE) {
            number = usedOf.size();
            usedOf.add(used);
            if (number == codes.length) {
                codes = Arrays.copyOf(codes, 2 * number);
            }
            codes[number] = code;
            used.numbers[code] = number;
        }
        return number;
    }

    /** The steps by strokes of a kind. */
    Steps steps(Kind kind) {
        return steps.computeIfAbsent(kind, any -> new Steps(any));
    }

    /** Where each state leads by strokes of one kind, worked out when first asked for. */
    final class Steps {
        private final Kind kind;
        private final int[] moved;
        private final int[] stands = new int[chain.limbs.length];
        private final int[] places = new int[chain.limbs.length];
        private int[][] rows = new int[64][];

        private Steps(Kind kind) {
            this.kind = kind;
            moved = Arrays.stream(kind.limbs()).map(chain::dimension).toArray();
        }

        /** For each of the kind's targets the state to which it leads, or {@link #NONE}. */
        int[] from(int state) {
            if (state >= rows.length) {
                rows = Arrays.copyOf(rows, Math.max(state + 1, 2 * rows.length));
            }
            int[] row = rows[state];
            if (row == null) {
                row = find(state);
                rows[state] = row;
            }
            return row;
        }

        private int[] find(int state) {
            Used from = usedOf.get(state);
            for (int d = 0; d < stands.length; d++) {
                stands[d] = from.surface(codes[state], d);
            }
            int[] row = new int[kind.targets().length];
            for (int t = 0; t < row.length; t++) {
                row[t] = follow(from, kind.targets()[t]);
            }
            return row;
        }

        private int follow(Used from, int target) {
            System.arraycopy(stands, 0, places, 0, places.length);
            for (int slot = 0; slot < moved.length; slot++) {
                int at = stands[moved[slot]];
                if (at >= 0 && !kind.moves().get(slot).allows(at, target)) {
                    return NONE;
                }
                places[moved[slot]] = target;
            }
            Used into = crossed(places) ? null : from.with(target);
            if (into == null) {
                return NONE;
            }
            int code = 0;
            for (int d = 0; d < places.length; d++) {
                code += places[d] < 0 ? 0 : into.places[d][places[d]] * into.strides[d];
            }
            return number(into, code);
        }
    }

    private boolean crossed(int[] places) {
        if (!chain.crossing) {
            return false;
        }
        int right = places[places.length - 2];
        int left = places[places.length - 1];
        return right >= 0 && left >= 0 && !plan.uncrossed(right, left);
    }
}
