package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * A whole number from which others are taken off, as long as it does not fall below 0: the way from
 * an index to its variation. In digits like {@link Wide}, so that taking off makes no objects.
 */
final class Rest {
    private static final long DIGIT = (1L << Wide.DIGIT_BITS) - 1;

    private long[] digits;
    private long[] spare;

    /** How many of the digits there are still; all above are 0. */
    private int used;

    /** Room for a sum that is about to be taken off. */
    private long[] room = new long[0];

    Rest(BigInteger number) {
        Wide one = Wide.of(number);
        digits = new long[one.places()];
        spare = new long[digits.length];
        used = digits.length;
        for (int p = 0; p < digits.length; p++) {
            digits[p] = one.digits[p][0];
        }
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

    /** Takes a number off; where it is more than what is left, leaves that and answers false. */
    boolean takeOff(Wide numbers, int index) {
        while (used > 1 && digits[used - 1] == 0) {
            used--;
        }
        for (int p = numbers.places() - 1; p >= used; p--) {
            if (numbers.digits[p][index] != 0) {
                return false;
            }
        }
        // No digit is negative, so that the highest alone tells most numbers that are more.
        if (used <= numbers.places() && numbers.digits[used - 1][index] > digits[used - 1]) {
            return false;
        }
        long carry = 0;
        for (int p = 0; p < used; p++) {
            long digit = p < numbers.places() ? numbers.digits[p][index] : 0;
            long left = digits[p] - digit + carry;
            spare[p] = left & DIGIT;
            carry = left >> Wide.DIGIT_BITS;
        }
        return carry == 0 && swap();
    }

    /**
     * Takes a number off that is 0 or more; where it is more than what is left, leaves that and
     * answers false.
     *
     * @param sums has its digits, which may be negative or beyond the base
     * @param at where the lowest stands
     * @param step from one to the next
     * @param places how many there are
     */
    boolean takeOff(long[] sums, int at, int step, int places) {
        long carry = 0;
        long left = 0;
        for (int p = 0; p < used; p++) {
            carry += p < places ? sums[at + p * step] : 0;
            left += digits[p] - (carry & DIGIT);
            spare[p] = left & DIGIT;
            left >>= Wide.DIGIT_BITS;
            carry >>= Wide.DIGIT_BITS;
        }
        for (int p = used; p < places; p++) {
            carry += sums[at + p * step];
            if ((carry & DIGIT) != 0) {
                return false;
            }
            carry >>= Wide.DIGIT_BITS;
        }
        return carry == 0 && left == 0 && swap();
    }

    /** Takes a number off; where it is more than what is left, leaves that and answers false. */
    boolean takeOff(BigInteger number) {
        return number.signum() == 0 || takeOff(Wide.of(number), 0);
    }

    private boolean swap() {
        long[] left = spare;
        spare = digits;
        digits = left;
        return true;
    }
}
