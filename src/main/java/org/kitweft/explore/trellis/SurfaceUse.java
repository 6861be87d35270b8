package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where all limbs stand and which surfaces have been struck: the states of a plan that counts
 * different surfaces by keeping track of them, numbered as they are found, and the steps between
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
    private final int base;

    /** Whether too many surfaces can be struck. */
    private final boolean limited;

    private final long all;
    private final Map<Long, Used> known = new HashMap<>();
    private final List<Used> usedOf = new ArrayList<>();
    private int[] codes = new int[64];
    private final Map<Kind, int[][]> steps = new HashMap<>();

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
                int[] mine =
                        chain.reach[d].stream().filter(s -> (struck >>> s & 1) != 0).toArray();
                surfaces[d] = mine;
                for (int i = 0; i < mine.length; i++) {
                    places[d][mine[i]] = base + i;
                }
                strides[d] = count;
                count *= base + mine.length;
            }
            numbers = new int[count];
            Arrays.fill(numbers, NONE);
            next = new @Nullable Used[m];
        }

        /** With one more surface struck; this one where that would be one too many. */
        Used with(int surface) {
            Used more = next[surface];
            if (more == null) {
                more = used(struck | 1L << surface);
                next[surface] = more;
            }
            return more;
        }

        boolean tooMany() {
            return limited && Long.bitCount(struck) > plan.limits.most();
        }

        /** The surface a limb stands on; negative if nowhere. */
        int surface(int code, int d) {
            int place = code / strides[d] % (base + surfaces[d].length);
            return place < base ? -1 : surfaces[d][place - base];
        }
    }

    SurfaceUse(Plan plan, Chain chain) {
        this.plan = plan;
        this.chain = chain;
        base = plan.limits.loop() ? 0 : 1;
        int m = plan.surfaces.size();
        limited = plan.limits.most() < m;
        all = (1L << m) - 1;
    }

    /** An upper bound of how many states there are that can follow one of them. */
    static double bound(Plan plan, Chain chain) {
        int m = plan.surfaces.size();
        int most = Math.min(plan.limits.most() < m ? plan.limits.most() : plan.limits.least(), m);
        // In a loop the surface of the first stroke is always among those struck.
        int fixed = plan.limits.loop() ? 1 : 0;
        double sum = 0;
        double sets = 1;
        for (int k = fixed; k <= most; k++) {
            double places = 1;
            for (int d = 0; d < chain.limbs.length; d++) {
                places *= Math.min(k, chain.reach[d].cardinality()) + 1 - fixed;
            }
            sum += sets * places;
            sets *= (double) (m - k) / (k + 1 - fixed);
        }
        return sum;
    }

    private Used used(long struck) {
        boolean enough = !limited && Long.bitCount(struck) >= plan.limits.least();
        return known.computeIfAbsent(enough ? all : struck, Used::new);
    }

    /** How many states have been found. */
    int size() {
        return usedOf.size();
    }

    /** Whether a variation may end with as many surfaces as a state's. */
    boolean enough(int state) {
        return Long.bitCount(usedOf.get(state).struck) >= plan.limits.least();
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
        if (used.tooMany()) {
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

    /** For each of a kind's targets the state to which it leads, or {@link #NONE}. */
    int[] steps(Kind kind, int state) {
        int[][] rows = steps.computeIfAbsent(kind, any -> new int[64][]);
        if (state >= rows.length) {
            rows = Arrays.copyOf(rows, Math.max(state + 1, 2 * rows.length));
            steps.put(kind, rows);
        }
        int[] row = rows[state];
        if (row == null) {
            row = find(kind, state);
            rows[state] = row;
        }
        return row;
    }

    private int[] find(Kind kind, int state) {
        Used from = usedOf.get(state);
        int limbs = chain.limbs.length;
        int[] stands = new int[limbs];
        for (int d = 0; d < limbs; d++) {
            stands[d] = from.surface(codes[state], d);
        }
        int[] moved = Arrays.stream(kind.limbs()).map(chain::dimension).toArray();
        int[] row = new int[kind.targets().length];
        int[] places = new int[limbs];
        for (int t = 0; t < row.length; t++) {
            int target = kind.targets()[t];
            row[t] = NONE;
            System.arraycopy(stands, 0, places, 0, limbs);
            boolean may = true;
            for (int slot = 0; slot < moved.length; slot++) {
                int at = stands[moved[slot]];
                may &= at < 0 || kind.moves().get(slot).allows(at, target);
                places[moved[slot]] = target;
            }
            if (!may || crossed(places)) {
                continue;
            }
            Used into = from.with(target);
            if (!into.tooMany()) {
                int code = 0;
                for (int d = 0; d < limbs; d++) {
                    code += places[d] < 0 ? 0 : into.places[d][places[d]] * into.strides[d];
                }
                row[t] = number(into, code);
            }
        }
        return row;
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
