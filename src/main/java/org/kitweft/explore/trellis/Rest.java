package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * A whole number from which others are taken off, as long as it does not fall below 0: the way from
 * an index to its variation. In digits like {@link Wide}, so that taking off makes no objects.
 */
final class Rest {
    private static final long DIGIT = (1L << Wide.DIGIT_BITS) - 1;

    private final long[] digits;

    /** How many of the digits there are still; all above are 0. */
    private int used;

    /** Room for a sum that is about to be taken off. */
    private long[] room = new long[0];

    Rest(BigInteger number) {
        digits = digits(number);
        used = digits.length;
    }

    /** So many zeros, to add up a number that is about to be taken off. */
    long[] room(int places) {
        if (room.length < places) {
            room = new long[places];
        } else {
            Arrays.fill(room, 0, places, 0);
        }
        return room;
    }

    /**
     * Takes a number off; where it is more than what is left, leaves that and answers false.
     *
     * @param numbers has its digits, none negative or beyond the base
     * @param at where the lowest stands
     * @param step from one to the next
     * @param places how many there are
     */
    boolean takeOff(long[] numbers, int at, int step, int places) {
        int p = Math.max(used, places) - 1;
        while (p > 0 && digit(p) == (p < places ? numbers[at + p * step] : 0)) {
            p--;
        }
        if (digit(p) < (p < places ? numbers[at + p * step] : 0)) {
            return false;
        }
        long carry = 0;
        for (int q = 0; q < places; q++) {
            long left = digit(q) - numbers[at + q * step] + carry;
            if (q < used) {
                digits[q] = left & DIGIT;
            }
            carry = left >> Wide.DIGIT_BITS;
        }
        for (int q = places; carry != 0; q++) {
            long left = digits[q] + carry;
            digits[q] = left & DIGIT;
            carry = left >> Wide.DIGIT_BITS;
        }
        while (used > 1 && digits[used - 1] == 0) {
            used--;
        }
        return true;
    }

    private long digit(int place) {
        return place < used ? digits[place] : 0;
    }

    /** Takes a number off; where it is more than what is left, leaves that and answers false. */
    boolean takeOff(BigInteger number) {
        long[] mine = digits(number);
        return takeOff(mine, 0, 1, mine.length);
    }

    private static long[] digits(BigInteger number) {
        long[] digits = new long[number.bitLength() / Wide.DIGIT_BITS + 1];
        for (int p = 0; p < digits.length; p++) {
            digits[p] = number.shiftRight(p * Wide.DIGIT_BITS).longValue() & DIGIT;
        }
        return digits;
    }
}
