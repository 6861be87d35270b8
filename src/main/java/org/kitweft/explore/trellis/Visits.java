package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * For each stroke of a chain within bounds and each surface the ways of the chain that strike it
 * there.
 */
final class Visits {
    private final Passage passage;
    private final Ways ways;

    /**
     * Counts, but for what is known.
     *
     * @param known the ways of other bounds of the same chain, by their shape; safe for use by
     *     several threads
     */
    Visits(Passage passage, Map<Shape, Ways> known) {
        this.passage = passage;
        Ground ground = passage.ground;
        int[] starts = ground.loop ? passage.rowsIn(ground.chain.ends) : passage.nowhere();
        ways = known.computeIfAbsent(passage.shape(starts), any -> new Ways(passage, starts));
    }

    /**
     * For each stroke and row after it the ways that go through: those from the start to there
     * times those from there on. In a loop each start is the end too.
     */
    static final class Ways {
        /** In a loop, starts are taken so many at a time that they take this much. */
        private static final long MOST_BYTES = 16L << 20;

        private final Passage passage;
        private final boolean narrow;

        /** For each stroke and row, narrow. */
        private final long[][] low;

        /** The same, wide; none where there are no ways. */
        private final @Nullable Products[][] big;

        private Ways(Passage passage, int[] starts) {
            this.passage = passage;
            narrow = passage.narrow;
            int strokes = passage.ground.kindOf.length;
            low = new long[narrow ? strokes : 0][passage.size()];
            big = new @Nullable Products[narrow ? 0 : strokes][passage.size()];
            if (!passage.ground.loop) {
                visit(passage.standing(starts), passage.anywhere(), 1);
                return;
            }
            long each = (long) Long.BYTES * places() * Math.max(1, passage.size()) * (strokes + 1);
            int atOnce = (int) Math.max(1, Math.min(starts.length, MOST_BYTES / each));
            for (int from = 0; from < starts.length; from += atOnce) {
                int to = Math.min(starts.length, from + atOnce);
                Wide standing = passage.standing(Arrays.copyOfRange(starts, from, to));
                visit(standing, standing, to - from);
            }
        }

        /** How many digits a number takes at most. */
        private int places() {
            double bits = 0;
            for (Kind kind : passage.ground.chain.kinds) {
                bits += Math.log(Math.max(1, kind.breadth())) / Math.log(2);
            }
            return narrow ? 1 : (int) (bits / Wide.DIGIT_BITS) + 1;
        }

        private void visit(Wide first, Wide last, int columns) {
            int strokes = passage.ground.kindOf.length;
            @Nullable Wide[] back = passage.back(last, columns, 1, strokes + 1);
            Wide here = first;
            for (int j = 0; j < strokes; j++) {
                here = passage.forth(j, here, columns);
                Wide onward = Objects.requireNonNull(back[j + 1]);
                for (int row = 0; row < passage.size(); row++) {
                    add(j, row, here, onward, columns);
                }
            }
        }

        private void add(int stroke, int row, Wide here, Wide back, int columns) {
            int from = row * columns;
            if (narrow) {
                long[] there = here.digits[0];
                long[] onward = back.digits[0];
                long sum = 0;
                for (int at = from; at < from + columns; at++) {
                    sum += there[at] * onward[at];
                }
                low[stroke][row] += sum;
                return;
            }
            for (int at = from; at < from + columns; at++) {
                if (!here.isZero(at) && !back.isZero(at)) {
                    Products products = big[stroke][row];
                    if (products == null) {
                        products = new Products(2 * places());
                        big[stroke][row] = products;
                    }
                    products.add(here, at, back, at);
                }
            }
        }

        private BigInteger get(int stroke, int row) {
            if (narrow) {
                return BigInteger.valueOf(low[stroke][row]);
            }
            Products products = big[stroke][row];
            return products == null ? BigInteger.ZERO : products.sum();
        }
    }

    /** Adds the ways in which each stroke of the chain strikes each surface, so many times. */
    void addTo(BigInteger[][] bySurface, BigInteger times) {
        Chain chain = passage.ground.chain;
        for (int j = 0; j < chain.strokes.length; j++) {
            BigInteger[] row = bySurface[chain.strokes[j]];
            int moved = chain.dimension(chain.kinds[j].limbs()[0]);
            for (int r = 0; r < passage.size(); r++) {
                BigInteger mine = ways.get(j, r);
                if (mine.signum() != 0) {
                    int surface = passage.surface(r, moved);
                    row[surface] = row[surface].add(mine.multiply(times));
                }
            }
        }
    }

    /** All ways. */
    BigInteger total() {
        BigInteger sum = BigInteger.ZERO;
        for (int row = 0; row < passage.size(); row++) {
            sum = sum.add(ways.get(0, row));
        }
        return sum;
    }
}
