package org.kitweft.explore.trellis;

import java.util.Arrays;

/**
 * For each stroke of a chain and each state before it, the least cost to play on to the end: the
 * same trellis as {@link Table}, with the least in place of the sum. In a loop it has a column for
 * each end state.
 */
final class LeastCosts {
    private final Layout layout;
    private final int chain;
    private final boolean loop;
    private final int[] ends;
    private final int columns;
    private final long[][] layers;
    private final Priced priced;

    /** For each limb of the chain its first stroke, and its place among that stroke's limbs. */
    private final int[][] first;

    LeastCosts(Plan plan, Priced priced, Layout layout, int chain) {
        this.layout = layout;
        this.priced = priced;
        first = layout.chain.firsts();
        this.chain = chain;
        loop = plan.limits.loop();
        ends = loop ? layout.endStates() : new int[0];
        columns = loop ? ends.length : 1;
        Chain strokes = layout.chain;
        layers = new long[strokes.kinds.length + 1][];
        long[] next = new long[layout.states * columns];
        Arrays.fill(next, loop ? Priced.NEVER : 0);
        for (int c = 0; c < ends.length; c++) {
            next[ends[c] * columns + c] = 0;
        }
        layers[strokes.kinds.length] = next;
        for (int j = strokes.kinds.length - 1; j >= 0; j--) {
            layers[j] = before(strokes.kinds[j], strokes.strokes[j], layers[j + 1]);
        }
    }

    private long[] before(Kind kind, int stroke, long[] next) {
        long[] here = new long[next.length];
        Arrays.fill(here, Priced.NEVER);
        int[] limbs = kind.limbs();
        layout.steps(kind)
                .forEach(
                        (state, target, t) -> {
                            int surface = kind.targets()[t];
                            long price = priced.surfaces[stroke][surface];
                            for (int slot = 0; slot < limbs.length; slot++) {
                                int from =
                                        layout.surface(state, layout.chain.dimension(limbs[slot]));
                                price += priced.move(stroke, slot, from, surface);
                            }
                            for (int c = 0; c < columns; c++) {
                                long sum = price + next[target * columns + c];
                                int at = state * columns + c;
                                here[at] = Math.min(here[at], sum);
                            }
                        });
        return here;
    }

    /**
     * The least cost to complete a beginning and, in a loop, to come back to its first strokes;
     * {@link Priced#NEVER} or more if none can.
     *
     * @param node the beginning
     * @param starts for each limb, by its ordinal, where it struck first; negative for nowhere yet
     */
    long after(TableNode node, int[] starts) {
        long[] layer = layers[node.progress(chain)];
        long least = Priced.NEVER;
        for (int c = 0; c < columns; c++) {
            int index = index(node, c);
            least = index < 0 ? least : Math.min(least, layer[index] + seam(c, starts));
        }
        return least;
    }

    private long seam(int column, int[] starts) {
        long price = 0;
        for (int d = 0; loop && d < first.length; d++) {
            int start = starts[layout.chain.limbs[d]];
            if (start >= 0) {
                int end = layout.surface(ends[column], d);
                price += priced.move(first[d][0], first[d][1], end, start);
            }
        }
        return price;
    }

    private int index(TableNode node, int column) {
        int state = 0;
        for (int d = 0; d < layout.sizes.length; d++) {
            int limb = layout.chain.limbs[d];
            int surface = node.place(limb);
            if (loop) {
                int end = layout.surface(ends[column], d);
                if (!node.mayEnd(limb, end)) {
                    return -1;
                }
                surface = surface < 0 ? end : surface;
            }
            int place = surface < 0 ? 0 : layout.places[d][surface];
            if (place < 0) {
                return -1;
            }
            state += place * layout.strides[d];
        }
        return layout.valid[state] ? state * columns + column : -1;
    }
}
