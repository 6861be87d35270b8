package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * In a loop, for each stroke of a chain and each surface the ways of the chain that strike it
 * there: from each state before the first stroke to the stroke, and from there back.
 */
final class Visits {
    /** States before the first stroke are taken so many at a time that they take this much. */
    private static final long MOST_BYTES = 16L << 20;

    private final Layout layout;
    private final boolean narrow;
    private final Passage passage;

    /** For each stroke of the chain and surface, narrow. */
    private final long[][] low;

    /** The same, wide. */
    private final BigInteger[][] big;

    Visits(Plan plan, Layout layout, boolean narrow) {
        this.layout = layout;
        this.narrow = narrow;
        passage = new Passage(layout, narrow);
        int strokes = layout.chain.kinds.length;
        int m = plan.surfaces.size();
        low = new long[narrow ? strokes : 0][m];
        big = new BigInteger[narrow ? 0 : strokes][m];
        for (BigInteger[] row : big) {
            Arrays.fill(row, BigInteger.ZERO);
        }
        int[] starts = layout.endStates();
        long places = narrow ? 1 : plan.bound().bitLength() / Wide.DIGIT_BITS + 1;
        long each = Long.BYTES * places * Math.max(1, layout.states) * (strokes + 1);
        int atOnce = (int) Math.max(1, Math.min(starts.length, MOST_BYTES / each));
        for (int from = 0; from < starts.length; from += atOnce) {
            int to = Math.min(starts.length, from + atOnce);
            visit(Arrays.copyOfRange(starts, from, to));
        }
    }

    private void visit(int[] starts) {
        Kind[] kinds = layout.chain.kinds;
        Wide[] back = passage.back(kinds, starts);
        Wide here = passage.standing(starts);
        for (int j = 0; j < kinds.length; j++) {
            here = passage.forth(kinds[j], here, starts.length);
            int moved = layout.chain.dimension(kinds[j].limbs()[0]);
            for (int state = 0; state < layout.states; state++) {
                if (layout.valid[state]) {
                    int row = passage.row(state) * starts.length;
                    add(j, layout.surface(state, moved), here, back[j + 1], row, starts.length);
                }
            }
        }
    }

    private void add(int stroke, int surface, Wide here, Wide back, int row, int columns) {
        if (narrow) {
            long[] there = here.digits[0];
            long[] onward = back.digits[0];
            long sum = 0;
            for (int at = row; at < row + columns; at++) {
                sum += there[at] * onward[at];
            }
            low[stroke][surface] += sum;
            return;
        }
        Products products = new Products(here.places() + back.places());
        for (int at = row; at < row + columns; at++) {
            products.add(here, at, back, at);
        }
        big[stroke][surface] = big[stroke][surface].add(products.sum());
    }

    /** The ways in which a stroke of the chain strikes a surface; narrow. */
    long low(int stroke, int surface) {
        return low[stroke][surface];
    }

    /** The ways in which a stroke of the chain strikes a surface. */
    BigInteger get(int stroke, int surface) {
        return narrow ? BigInteger.valueOf(low[stroke][surface]) : big[stroke][surface];
    }

    /** All ways. */
    BigInteger total() {
        return narrow
                ? BigInteger.valueOf(Arrays.stream(low[0]).sum())
                : Arrays.stream(big[0]).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
