package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.kitweft.kit.Limb;

/**
 * Where the limbs of a chain may stand, over all its surfaces, and the steps between these states:
 * worked out once, and then cut to many {@linkplain Bounds bounds} by {@link Passage}. Unlike in a
 * {@link Layout}, only states in which no hands cross have numbers. Immutable.
 */
final class Ground {
    /** The number that stands for no state. */
    static final int NONE = -1;

    final Chain chain;

    /** Whether limbs come from where they will end, so that none stands nowhere. */
    final boolean loop;

    /** How many states there are. */
    final int size;

    /** For each limb and state the surface; negative for nowhere yet, which no loop has. */
    final int[][] surface;

    /** For each stroke of the chain which of its kinds it is, numbered as they come. */
    final int[] kindOf;

    final int kinds;

    /** For each kind, state and one of the plan's surfaces where a stroke there leads. */
    private final int[][] next;

    /** For each kind and state where it leads, as often as it has sounds there. */
    private final int[][][] leads;

    /** How many surfaces the plan has. */
    final int surfaces;

    /** For each limb and surface its place among those that the limb reaches. */
    private final int[][] places;

    private final int[] strides;

    /** For the places of all limbs the number of the state. */
    private final int[] numbers;

    Ground(Plan plan, Chain chain) {
        this.chain = chain;
        surfaces = plan.surfaces.size();
        loop = plan.limits.loop();
        int limbs = chain.limbs.length;
        places = new int[limbs][surfaces];
        strides = new int[limbs];
        int[][] reach = new int[limbs][];
        int codes = 1;
        for (int d = limbs - 1; d >= 0; d--) {
            strides[d] = codes;
            reach[d] = reach(chain.reach[d], loop);
            for (int place = 0; place < reach[d].length; place++) {
                if (reach[d][place] >= 0) {
                    places[d][reach[d][place]] = place;
                }
            }
            codes = Math.multiplyExact(codes, reach[d].length);
        }
        numbers = new int[codes];
        surface = new int[limbs][codes];
        int[] stands = new int[limbs];
        int count = 0;
        for (int code = 0; code < codes; code++) {
            for (int d = 0; d < limbs; d++) {
                stands[d] = reach[d][code / strides[d] % reach[d].length];
                surface[d][count] = stands[d];
            }
            numbers[code] = crosses(plan, stands) ? NONE : count++;
        }
        size = count;
        Map<Kind, Integer> known = new HashMap<>();
        kindOf = new int[chain.kinds.length];
        for (int j = 0; j < kindOf.length; j++) {
            known.putIfAbsent(chain.kinds[j], known.size());
            kindOf[j] = known.get(chain.kinds[j]);
        }
        kinds = known.size();
        next = new int[kinds][size * surfaces];
        leads = new int[kinds][size][];
        known.forEach((kind, k) -> step(kind, next[k], leads[k]));
    }

    /** The surfaces of a limb from left to right, after nowhere where no loop has brought it. */
    private static int[] reach(BitSet surfaces, boolean loop) {
        return loop
                ? surfaces.stream().toArray()
                : IntStream.concat(IntStream.of(-1), surfaces.stream()).toArray();
    }

    private boolean crosses(Plan plan, int[] stands) {
        if (!chain.crossing) {
            return false;
        }
        int right = stands[chain.dimension(Limb.RIGHT_HAND.ordinal())];
        int left = stands[chain.dimension(Limb.LEFT_HAND.ordinal())];
        return right >= 0 && left >= 0 && !plan.uncrossed(right, left);
    }

    private void step(Kind kind, int[] next, int[][] leads) {
        Arrays.fill(next, NONE);
        int[] lead = new int[kind.breadth()];
        for (int state = 0; state < size; state++) {
            int count = 0;
            for (int t = 0; t < kind.targets().length; t++) {
                int target = kind.targets()[t];
                int to = step(kind, state, target);
                next[state * surfaces + target] = to;
                for (int i = 0; to != NONE && i < kind.sounds()[t]; i++) {
                    lead[count++] = to;
                }
            }
            leads[state] = Arrays.copyOf(lead, count);
        }
    }

    private int step(Kind kind, int state, int target) {
        int code = 0;
        for (int d = 0; d < strides.length; d++) {
            code += code(d, surface[d][state]);
        }
        for (int slot = 0; slot < kind.limbs().length; slot++) {
            int d = chain.dimension(kind.limbs()[slot]);
            int from = surface[d][state];
            if (from >= 0 && !kind.moves().get(slot).allows(from, target)) {
                return NONE;
            }
            code += code(d, target) - code(d, from);
        }
        return numbers[code];
    }

    /** What a limb on a surface, or nowhere, adds to the code of a state. */
    int code(int d, int surface) {
        return surface < 0 ? 0 : places[d][surface] * strides[d];
    }

    /** Where a stroke of the chain on a surface leads; {@link #NONE} if it may not. */
    int next(int stroke, int state, int surface) {
        return next[kindOf[stroke]][state * surfaces + surface];
    }

    /** Where strokes of a kind lead from a state, as often as they have sounds there. */
    int[] leads(int kind, int state) {
        return leads[kind][state];
    }

    /** The state of a code; {@link #NONE} if hands cross there. */
    int state(int code) {
        return numbers[code];
    }

    /**
     * The state in which limbs stand; {@link #NONE} if they cannot.
     *
     * @param stands by limb the surface, within its reach; negative for nowhere
     */
    int state(int[] stands) {
        int code = 0;
        for (int d = 0; d < strides.length; d++) {
            code += code(d, stands[chain.limbs[d]]);
        }
        return numbers[code];
    }
}
