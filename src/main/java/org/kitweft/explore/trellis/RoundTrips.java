package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The ways of a chain in a loop, by the state in which all its limbs stand once each of them has
 * struck: those that come back to it.
 *
 * <p>Played in two halves, from each such state to each in the middle and from there back: the
 * numbers of a half are half as long, and a sticking that repeats needs one half only. What both
 * halves agree on is multiplied and added up.
 *
 * <p>Made for many small layouts: states that cross are left out beforehand, and each half is a
 * matrix with a row for each state.
 */
final class RoundTrips {
    final Layout layout;
    private final boolean narrow;
    private final Map<Kind, int[][]> rows = new HashMap<>();

    /** For each state its number among the valid ones; negative if hands cross there. */
    private final int[] number;

    private final int valid;
    private final int[] starts;

    /** For each start the ways, narrow. */
    private final long[] low;

    /** The same, wide. */
    private final BigInteger[] big;

    RoundTrips(Layout layout, boolean narrow) {
        this.layout = layout;
        this.narrow = narrow;
        Chain chain = layout.chain;
        number = new int[layout.states];
        int count = 0;
        for (int state = 0; state < number.length; state++) {
            number[state] = layout.valid[state] ? count++ : -1;
        }
        valid = count;
        int n = chain.kinds.length;
        Kind[] turned = new Kind[n];
        for (int j = 0; j < n; j++) {
            turned[j] = chain.kinds[(chain.head + j) % n];
        }
        int half = n / 2;
        starts = layout.statesIn(chain.before(chain.head % n));
        // A first half of no strokes stays where it is.
        int[] middles = half == 0 ? starts : layout.statesIn(chain.before((chain.head + half) % n));
        Wide back = between(turned, half, n, starts);
        boolean repeats = n == 2 * half && repeats(turned, half);
        Wide there = repeats ? back : between(turned, 0, half, middles);
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

    /** The ways from each state before one stroke to given states before a later one. */
    private Wide between(Kind[] kinds, int from, int to, int[] ends) {
        int columns = ends.length;
        long[] last = new long[valid * columns];
        for (int c = 0; c < columns; c++) {
            last[number[ends[c]] * columns + c] = 1;
        }
        Wide next = Wide.of(last);
        Wide spare = null;
        double bits = 1;
        for (int j = to - 1; j >= from; j--) {
            int[][] leads = rows.computeIfAbsent(kinds[j], this::rows);
            double grows = Math.log(most(leads)) / Math.log(2);
            if (!narrow && bits + grows >= Long.SIZE - 2) {
                next = next.carried();
                bits = Wide.DIGIT_BITS;
                spare = null;
            }
            Wide here = spare == null ? Wide.zero(last.length, next.places()) : spare;
            for (int p = 0; p < next.places(); p++) {
                for (int row = 0; row < valid; row++) {
                    sum(next.digits[p], leads[row], here.digits[p], row * columns, columns);
                }
            }
            spare = next;
            next = here;
            bits += grows;
        }
        return narrow ? next : next.carried();
    }

    private static int most(int[][] leads) {
        int most = 1;
        for (int[] lead : leads) {
            most = Math.max(most, lead.length);
        }
        return most;
    }

    /** For each valid state those that a kind leads to, as often as it has sounds there. */
    private int[][] rows(Kind kind) {
        int[][] leads = new int[valid][];
        int[] lead = new int[kind.breadth()];
        int[] at = {0, 0};
        layout.steps(kind)
                .forEach(
                        (state, next, target) -> {
                            for (; at[0] < number[state]; at[0]++) {
                                leads[at[0]] = Arrays.copyOf(lead, at[1]);
                                at[1] = 0;
                            }
                            for (int i = 0; i < kind.sounds()[target]; i++) {
                                lead[at[1]++] = number[next];
                            }
                        });
        for (; at[0] < valid; at[0]++) {
            leads[at[0]] = Arrays.copyOf(lead, at[1]);
            at[1] = 0;
        }
        return leads;
    }

    /** Adds up rows, up to four at once: fewer ways to memory and back. */
    private static void sum(long[] from, int[] leads, long[] into, int write, int columns) {
        int i = leads.length % 4;
        int one = i > 0 ? leads[0] * columns : 0;
        int two = i > 1 ? leads[1] * columns : 0;
        int three = i > 2 ? leads[2] * columns : 0;
        switch (i) {
            case 0 -> Arrays.fill(into, write, write + columns, 0);
            case 1 -> System.arraycopy(from, one, into, write, columns);
            case 2 -> {
                for (int x = 0; x < columns; x++) {
                    into[write + x] = from[one + x] + from[two + x];
                }
            }
            default -> {
                for (int x = 0; x < columns; x++) {
                    into[write + x] = from[one + x] + from[two + x] + from[three + x];
                }
            }
        }
        for (; i < leads.length; i += 4) {
            int first = leads[i] * columns;
            int second = leads[i + 1] * columns;
            int third = leads[i + 2] * columns;
            int fourth = leads[i + 3] * columns;
            for (int x = 0; x < columns; x++) {
                into[write + x] +=
                        from[first + x] + from[second + x] + from[third + x] + from[fourth + x];
            }
        }
    }

    private long meet(Wide there, Wide back, int start, int[] middles) {
        int row = number[starts[start]] * middles.length;
        long sum = 0;
        for (int m = 0; m < middles.length; m++) {
            sum += there.low(row + m) * back.low(number[middles[m]] * starts.length + start);
        }
        return sum;
    }

    private BigInteger meetWide(Wide there, Wide back, int start, int[] middles) {
        int places = there.places() + back.places() - 1;
        long[] lows = new long[places];
        long[] highs = new long[places];
        int row = number[starts[start]] * middles.length;
        for (int m = 0; m < middles.length; m++) {
            int from = number[middles[m]] * starts.length + start;
            for (int p = 0; p < there.places(); p++) {
                for (int q = 0; q < back.places(); q++) {
                    long a = there.digits[p][row + m];
                    long b = back.digits[q][from];
                    long product = a * b;
                    lows[p + q] += product;
                    highs[p + q] += Math.multiplyHigh(a, b);
                    // An unsigned sum that is less than a summand has carried.
                    if (Long.compareUnsigned(lows[p + q], product) < 0) {
                        highs[p + q]++;
                    }
                }
            }
        }
        BigInteger sum = BigInteger.ZERO;
        for (int p = 0; p < places; p++) {
            BigInteger unsigned = new BigInteger(Long.toUnsignedString(lows[p]));
            BigInteger digit = BigInteger.valueOf(highs[p]).shiftLeft(Long.SIZE).add(unsigned);
            sum = sum.add(digit.shiftLeft(p * Wide.DIGIT_BITS));
        }
        return sum;
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
