package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * The ways of a chain in a loop, by the state in which all its limbs stand once each of them has
 * struck: those that come back to it.
 *
 * <p>Played in two halves, from each such state to each in the middle and from there back: the
 * numbers of a half are half as long, and a sticking that repeats needs one half only. What both
 * halves agree on is multiplied and added up.
 */
final class RoundTrips {
    final Layout layout;
    private final boolean narrow;
    private final Passage passage;
    private final int[] starts;

    /** For each start the ways, narrow. */
    private final long[] low;

    /** The same, wide. */
    private final BigInteger[] big;

    RoundTrips(Layout layout, boolean narrow) {
        this.layout = layout;
        this.narrow = narrow;
        Chain chain = layout.chain;
        passage = new Passage(layout, narrow);
        int n = chain.kinds.length;
        Kind[] turned = new Kind[n];
        for (int j = 0; j < n; j++) {
            turned[j] = chain.kinds[(chain.head + j) % n];
        }
        int half = n / 2;
        starts = layout.statesIn(chain.before(chain.head % n));
        // A first half of no strokes stays where it is.
        int[] middles = half == 0 ? starts : layout.statesIn(chain.before((chain.head + half) % n));
        Wide back = passage.between(turned, half, n, starts);
        boolean repeats = n == 2 * half && repeats(turned, half);
        Wide there = repeats ? back : passage.between(turned, 0, half, middles);
        low = new long[narrow ? starts.length : 0];
        big = new BigInteger[narrow ? 0 : starts.length];
        for (int s = 0; s < starts.length; s++) {
            if (narrow) {
                low[s] = meet(there, back, s, middles);
            } else {
                big[s] = meetWide(there, back, s, middles);
            }
        }
    }

    private static boolean repeats(Kind[] kinds, int half) {
        return Arrays.equals(kinds, 0, half, kinds, half, 2 * half);
    }

    private long meet(Wide there, Wide back, int start, int[] middles) {
        int row = passage.row(starts[start]) * middles.length;
        long sum = 0;
        for (int m = 0; m < middles.length; m++) {
            sum += there.low(row + m) * back.low(passage.row(middles[m]) * starts.length + start);
        }
        return sum;
    }

    private BigInteger meetWide(Wide there, Wide back, int start, int[] middles) {
        Products products = new Products(there.places() + back.places());
        int row = passage.row(starts[start]) * middles.length;
        for (int m = 0; m < middles.length; m++) {
            int from = passage.row(middles[m]) * starts.length + start;
            products.add(there, row + m, back, from);
        }
        return products.sum();
    }

    /** How many states there are in which the limbs may stand once each has struck. */
    int size() {
        return starts.length;
    }

    /** The surface on which a limb of the chain stands then. */
    int surface(int start, int d) {
        return layout.surface(starts[start], d);
    }

    /** The ways from one of these states and back, narrow. */
    long low(int start) {
        return low[start];
    }

    /** The ways from one of these states and back, wide. */
    BigInteger big(int start) {
        return big[start];
    }

    /** All ways. */
    BigInteger total() {
        return narrow
                ? BigInteger.valueOf(Arrays.stream(low).sum())
                : Arrays.stream(big).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
