package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.kitweft.kit.Limb;

/**
 * A chain on a set of surfaces: its states, numbered, and the steps between them.
 *
 * <p>A state says where each limb of the chain stands. Without the loop rule a limb may also stand
 * nowhere yet: place 0. The last limb's place counts fastest; right hand and left hand are the last
 * two, and places go from left to right, so that where the right hand stands decides up to which
 * place of the left hand's nothing crosses.
 */
final class Layout {
    private static final int RIGHT_HAND = Limb.RIGHT_HAND.ordinal();

    final Chain chain;

    /** 1 if place 0 stands for nowhere, else 0. */
    final int base;

    /** For each limb its surfaces, from left to right. */
    final int[][] surfaces;

    /** For each limb and surface the place; negative if the limb has no business there. */
    final int[][] places;

    final int[] sizes;
    final int[] strides;
    final int states;

    /** For each state whether no hands cross. */
    final boolean[] valid;

    /** For each place of the right hand, how many places of the left hand's cross nothing. */
    private final int[] free;

    private final int right;
    private final Map<Kind, Steps> steps = new ConcurrentHashMap<>();
    private final Map<Kind, int[]> nexts = new ConcurrentHashMap<>();

    Layout(Plan plan, Chain chain, BitSet allowed) {
        this(plan, chain, everyLimb(chain, allowed));
    }

    /**
     * A chain each of whose limbs has a set of its own.
     *
     * @param allowed for each limb of the chain
     */
    Layout(Plan plan, Chain chain, List<BitSet> allowed) {
        this.chain = chain;
        base = plan.limits.loop() ? 0 : 1;
        int limbs = chain.limbs.length;
        surfaces = new int[limbs][];
        places = new int[limbs][];
        sizes = new int[limbs];
        strides = new int[limbs];
        int count = 1;
        for (int d = limbs - 1; d >= 0; d--) {
            BitSet mine = (BitSet) chain.reach[d].clone();
            mine.and(allowed.get(d));
            surfaces[d] = new int[mine.cardinality()];
            places[d] = new int[plan.surfaces.size()];
            Arrays.fill(places[d], -1);
            int i = 0;
            for (int s = mine.nextSetBit(0); s >= 0; s = mine.nextSetBit(s + 1)) {
                surfaces[d][i] = s;
                places[d][s] = base + i++;
            }
            sizes[d] = surfaces[d].length + base;
            strides[d] = count;
            count = Math.multiplyExact(count, sizes[d]);
        }
        states = count;
        right = chain.crossing ? chain.dimension(RIGHT_HAND) : -1;
        free = chain.crossing ? free(plan) : new int[0];
        valid = new boolean[states];
        for (int state = 0; state < states; state++) {
            valid[state] = !chain.crossing || place(state, right + 1) < free[place(state, right)];
        }
    }

    private static List<BitSet> everyLimb(Chain chain, BitSet allowed) {
        return Collections.nCopies(chain.limbs.length, allowed);
    }

    private int[] free(Plan plan) {
        int[] all = new int[sizes[right]];
        for (int place = 0; place < all.length; place++) {
            int open = base;
            for (int left : surfaces[right + 1]) {
                if (place < base || plan.uncrossed(surfaces[right][place - base], left)) {
                    open++;
                }
            }
            all[place] = open;
        }
        return all;
    }

    /** Where a limb stands in a state. */
    int place(int state, int limb) {
        return state / strides[limb] % sizes[limb];
    }

    /** The surface a limb stands on in a state; negative if nowhere. */
    int surface(int state, int limb) {
        int place = place(state, limb);
        return place < base ? -1 : surfaces[limb][place - base];
    }

    /** The valid states in which each limb stands on one of these surfaces. */
    int[] statesIn(BitSet[] ends) {
        int[] all = new int[states];
        int count = 0;
        for (int state = 0; state < states; state++) {
            if (valid[state] && endsIn(state, ends)) {
                all[count++] = state;
            }
        }
        return Arrays.copyOf(all, count);
    }

    /** The states in which a pass may end. */
    int[] endStates() {
        return statesIn(chain.ends);
    }

    /** Whether each limb stands on one of these surfaces. */
    boolean endsIn(int state, BitSet[] ends) {
        for (int d = 0; d < sizes.length; d++) {
            int surface = surface(state, d);
            if (surface < 0 || !ends[d].get(surface)) {
                return false;
            }
        }
        return true;
    }

    /** For each state and each of the plan's surfaces {@link #next}, made once for a kind. */
    int[] nexts(Kind kind) {
        return nexts.computeIfAbsent(
                kind,
                any -> {
                    int m = places[0].length;
                    int[] all = new int[states * m];
                    Arrays.setAll(all, at -> next(kind, at / m, at % m));
                    return all;
                });
    }

    /** Where a stroke of a kind on a surface leads; negative if it may not. */
    private int next(Kind kind, int state, int surface) {
        int next = state;
        for (int slot = 0; slot < kind.limbs().length; slot++) {
            int d = chain.dimension(kind.limbs()[slot]);
            int place = place(state, d);
            int target = places[d][surface];
            if (target < 0
                    || (place >= base
                            && !kind.moves()
                                    .get(slot)
                                    .allows(surfaces[d][place - base], surface))) {
                return -1;
            }
            next += (target - place) * strides[d];
        }
        return valid[next] ? next : -1;
    }

    /** The steps of a kind of stroke. */
    Steps steps(Kind kind) {
        return steps.computeIfAbsent(kind, any -> new Steps(any));
    }

    /** Where each state leads by strokes of one kind. */
    final class Steps {
        private final int[] dims;

        /**
         * For one limb: for each place the places it may go to, ascending, and by how many sounds.
         */
        private final int[][] to;

        private final int[][] sounds;

        /** Which of the kind's targets each of these places is. */
        private final int[][] which;

        private final Kind kind;

        /** Whether each target has one sound only. */
        private final boolean alike;

        private Steps(Kind kind) {
            this.kind = kind;
            alike = kind.breadth() == kind.targets().length;
            dims = Arrays.stream(kind.limbs()).map(chain::dimension).toArray();
            int size = sizes[dims[0]];
            to = new int[size][];
            sounds = new int[size][];
            which = new int[size][];
            int[] places = new int[kind.targets().length];
            int[] counts = new int[places.length];
            int[] targets = new int[places.length];
            for (int place = 0; place < size; place++) {
                int n = 0;
                for (int t = 0; t < kind.targets().length; t++) {
                    int target = kind.targets()[t];
                    if (Layout.this.places[dims[0]][target] >= 0 && allows(0, place, target)) {
                        places[n] = Layout.this.places[dims[0]][target];
                        targets[n] = t;
                        counts[n++] = kind.sounds()[t];
                    }
                }
                to[place] = Arrays.copyOf(places, n);
                sounds[place] = Arrays.copyOf(counts, n);
                which[place] = Arrays.copyOf(targets, n);
            }
        }

        private boolean allows(int slot, int place, int target) {
            return place < base
                    || kind.moves().get(slot).allows(surfaces[dims[slot]][place - base], target);
        }

        /**
         * Adds to each state what stands at the states it leads to. Every state has a row of
         * columns.
         */
        void add(long[] from, long[] into, int columns) {
            if (states == 0) {
                return;
            }
            if (dims.length > 1) {
                addTogether(from, into, columns);
                return;
            }
            int d = dims[0];
            int size = sizes[d];
            int block = strides[d] * columns;
            int outer = states / (size * strides[d]);
            boolean isLeft = right >= 0 && d == right + 1;
            for (int o = 0; o < outer; o++) {
                int open = isLeft ? free[o % sizes[right]] : size;
                int offset = o * size * block;
                for (int place = 0; place < open; place++) {
                    if (d == right) {
                        addRight(from, into, offset, place, block, columns);
                    } else if (alike) {
                        addAll(from, into, offset, place, block, open);
                    } else {
                        addEach(from, into, offset, place, block, open);
                    }
                }
            }
        }

        /** The right hand moves: how far the left hand's places are open depends on both ends. */
        private void addRight(
                long[] from, long[] into, int offset, int place, int block, int columns) {
            int here = offset + place * block;
            int[] targets = to[place];
            for (int t = 0; t < targets.length; t++) {
                int there = offset + targets[t] * block;
                int length = Math.min(free[place], free[targets[t]]) * columns;
                // Two at once where both are open: half the way to memory and back.
                if (alike && t + 1 < targets.length) {
                    int next = offset + targets[t + 1] * block;
                    int nextLength = Math.min(free[place], free[targets[t + 1]]) * columns;
                    addTwo(from, there, next, into, here, length);
                    addRow(from, next + length, into, here + length, nextLength - length, 1);
                    t++;
                } else {
                    addRow(from, there, into, here, length, sounds[place][t]);
                }
            }
        }

        /** One move after the other. */
        private void addEach(long[] from, long[] into, int offset, int place, int block, int open) {
            int here = offset + place * block;
            int[] targets = to[place];
            for (int t = 0; t < targets.length && targets[t] < open; t++) {
                int there = offset + targets[t] * block;
                addRow(from, there, into, here, block, sounds[place][t]);
            }
        }

        /** All moves from a place, three at a time, where each target has one sound. */
        private void addAll(long[] from, long[] into, int offset, int place, int block, int open) {
            int here = offset + place * block;
            int[] targets = to[place];
            int count = 0;
            while (count < targets.length && targets[count] < open) {
                count++;
            }
            int t = 0;
            for (; t + 2 < count; t += 3) {
                addThree(
                        from,
                        offset + targets[t] * block,
                        offset + targets[t + 1] * block,
                        offset + targets[t + 2] * block,
                        into,
                        here,
                        block);
            }
            if (t + 1 < count) {
                int one = offset + targets[t] * block;
                addTwo(from, one, offset + targets[t + 1] * block, into, here, block);
            } else if (t < count) {
                addRow(from, offset + targets[t] * block, into, here, block, 1);
            }
        }

        /** Two limbs strike the same sound at once. */
        private void addTogether(long[] from, long[] into, int columns) {
            forEach(
                    (state, target, t) -> {
                        int times = kind.sounds()[t];
                        addRow(from, target * columns, into, state * columns, columns, times);
                    });
        }

        /** Visits all steps between valid states: from where, to where, on which target. */
        void forEach(Visitor visitor) {
            for (int state = 0; state < states; state++) {
                int place = place(state, dims[0]);
                for (int t = 0; valid[state] && t < to[place].length; t++) {
                    int next =
                            dims.length == 1
                                    ? state + (to[place][t] - place) * strides[dims[0]]
                                    : next(state, which[place][t]);
                    if (next >= 0 && valid[next]) {
                        visitor.step(state, next, which[place][t]);
                    }
                }
            }
        }

        private int next(int state, int t) {
            int next = state;
            int target = kind.targets()[t];
            for (int slot = 0; slot < dims.length; slot++) {
                int d = dims[slot];
                int place = place(state, d);
                if (places[d][target] < 0 || !allows(slot, place, target)) {
                    return -1;
                }
                next += (places[d][target] - place) * strides[d];
            }
            return valid[next] ? next : -1;
        }
    }

    /** Sees one step. */
    interface Visitor {
        /**
         * Called once for each step.
         *
         * @param state where it starts
         * @param next where it leads
         * @param target which of the kind's targets it strikes
         */
        void step(int state, int next, int target);
    }

    private static void addTwo(long[] from, int one, int two, long[] into, int write, int length) {
        for (int x = 0; x < length; x++) {
            into[write + x] += from[one + x] + from[two + x];
        }
    }

    private static void addThree(
            long[] from, int one, int two, int three, long[] into, int write, int length) {
        for (int x = 0; x < length; x++) {
            into[write + x] += from[one + x] + from[two + x] + from[three + x];
        }
    }

    private static void addRow(
            long[] from, int read, long[] into, int write, int length, int times) {
        if (times == 1) {
            for (int x = 0; x < length; x++) {
                into[write + x] += from[read + x];
            }
        } else {
            for (int x = 0; x < length; x++) {
                into[write + x] += times * from[read + x];
            }
        }
    }
}
