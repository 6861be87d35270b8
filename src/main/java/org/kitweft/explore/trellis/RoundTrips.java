package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Map;

/**
 * The ways of a chain in a loop, by where all its limbs stand once each of them has struck: those
 * that come back there.
 */
final class RoundTrips {
    private final Ground ground;

    /** The states. */
    private final int[] starts;

    private final Ways ways;

    /**
     * Counts, but for what is known.
     *
     * @param known the ways of other bounds of the same chain, by their shape; safe for use by
     *     several threads
     */
    RoundTrips(Passage passage, Map<Shape, Ways> known) {
        ground = passage.ground;
        int n = ground.kindOf.length;
        int head = ground.chain.head;
        int half = n / 2;
        int[] rows = passage.rowsIn(ground.chain.before(head % n));
        // A first half of no strokes stays where it is.
        int[] middles = half == 0 ? rows : passage.rowsIn(ground.chain.before((head + half) % n));
        starts = Arrays.stream(rows).map(passage::state).toArray();
        ways =
                known.computeIfAbsent(
                        passage.shape(rows, middles), any -> new Ways(passage, rows, middles));
    }

    /**
     * The ways from each start and back.
     *
     * <p>Played in two halves, from each start to each state in the middle and from there back: the
     * numbers of a half are half as long, and a sticking that repeats needs one half only. What
     * both halves agree on is multiplied and added up.
     */
    static final class Ways {
        /** For each start, narrow. */
        private final long[] low;

        /** The same, wide. */
        private final BigInteger[] big;

        private Ways(Passage passage, int[] starts, int[] middles) {
            boolean narrow = passage.narrow;
            int[] kinds = passage.ground.kindOf;
            int n = kinds.length;
            int half = n / 2;
            int head = passage.ground.chain.head;
            Wide back = passage.between(head + half, head + n, starts);
            // Whether the second half is the first again does not depend on where one starts.
            boolean repeats = n == 2 * half && Arrays.equals(kinds, 0, half, kinds, half, n);
            Wide there = repeats ? back : passage.between(head, head + half, middles);
            low = new long[narrow ? starts.length : 0];
            big = new BigInteger[narrow ? 0 : starts.length];
            for (int s = 0; s < starts.length; s++) {
                int row = starts[s] * middles.length;
                if (narrow) {
                    low[s] = meet(there.digits[0], row, back.digits[0], s, starts.length, middles);
                } else {
                    big[s] = meetWide(there, row, back, s, starts.length, middles);
                }
            }
        }

        private static long meet(
                long[] there, int row, long[] back, int start, int starts, int[] middles) {
            long sum = 0;
            for (int m = 0; m < middles.length; m++) {
                sum += there[row + m] * back[middles[m] * starts + start];
            }
            return sum;
        }

        private static BigInteger meetWide(
                Wide there, int row, Wide back, int start, int starts, int[] middles) {
            Products products = new Products(there.places() + back.places());
            for (int m = 0; m < middles.length; m++) {
                products.add(there, row + m, back, middles[m] * starts + start);
            }
            return products.sum();
        }
    }

    /** How many states there are in which the limbs may stand once each has struck. */
    int size() {
        return starts.length;
    }

    /** The surface on which a limb of the chain stands then. */
    int surface(int start, int d) {
        return ground.surface[d][starts[start]];
    }

    /** The ways from one of these states and back, narrow. */
    long low(int start) {
        return ways.low[start];
    }

    /** The ways from one of these states and back, wide. */
    BigInteger big(int start) {
        return ways.big[start];
    }

    /** All ways. */
    BigInteger total() {
        return ways.big.length == 0
                ? BigInteger.valueOf(Arrays.stream(ways.low).sum())
                : Arrays.stream(ways.big).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
