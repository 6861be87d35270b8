package org.kitweft.explore.trellis;

import java.math.BigInteger;

/**
 * The ways of a chain in a loop: those that end in the state they began in.
 *
 * <p>Played in two halves, from each state at the start to each in the middle and from there back:
 * the numbers of a half are half as long, and a sticking that repeats needs one half only. What
 * both halves agree on is multiplied and added up.
 */
final class RoundTrips {
    private final Wide there;
    private final Wide back;
    private final int[] starts;
    private final int[] middles;

    RoundTrips(Layout layout, boolean narrow) {
        Chain chain = layout.chain;
        int n = chain.kinds.length;
        int half = n / 2;
        starts = layout.endStates();
        // A first half of no strokes stays where it is.
        middles = half == 0 ? starts : layout.statesIn(chain.before(half));
        back = carried(Table.between(layout, half, n, starts, narrow).layer(half), narrow);
        there =
                repeats(chain.kinds, half)
                        ? back
                        : carried(Table.between(layout, 0, half, middles, narrow).layer(0), narrow);
    }

    private static Wide carried(Wide numbers, boolean narrow) {
        return narrow ? numbers : numbers.carried();
    }

    /** All ways, if they are fewer than 2^63. */
    long low() {
        long sum = 0;
        for (int s = 0; s < starts.length; s++) {
            for (int m = 0; m < middles.length; m++) {
                sum +=
                        there.low(starts[s] * middles.length + m)
                                * back.low(middles[m] * starts.length + s);
            }
        }
        return sum;
    }

    /** All ways. */
    BigInteger total() {
        int places = there.places() + back.places() - 1;
        long[] low = new long[places];
        long[] high = new long[places];
        for (int s = 0; s < starts.length; s++) {
            for (int m = 0; m < middles.length; m++) {
                int to = starts[s] * middles.length + m;
                int from = middles[m] * starts.length + s;
                for (int p = 0; p < there.places(); p++) {
                    for (int q = 0; q < back.places(); q++) {
                        long a = there.digits[p][to];
                        long b = back.digits[q][from];
                        long product = a * b;
                        low[p + q] += product;
                        high[p + q] += Math.multiplyHigh(a, b);
                        // An unsigned sum that is less than a summand has carried.
                        if (Long.compareUnsigned(low[p + q], product) < 0) {
                            high[p + q]++;
                        }
                    }
                }
            }
        }
        BigInteger sum = BigInteger.ZERO;
        for (int p = 0; p < places; p++) {
            BigInteger unsigned = new BigInteger(Long.toUnsignedString(low[p]));
            BigInteger digit = BigInteger.valueOf(high[p]).shiftLeft(Long.SIZE).add(unsigned);
            sum = sum.add(digit.shiftLeft(p * Wide.DIGIT_BITS));
        }
        return sum;
    }

    private static boolean repeats(Kind[] kinds, int half) {
        if (kinds.length != 2 * half) {
            return false;
        }
        for (int j = 0; j < half; j++) {
            if (kinds[j] != kinds[j + half]) {
                return false;
            }
        }
        return true;
    }
}
