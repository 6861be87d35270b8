package org.kitweft.explore.trellis;

import java.math.BigInteger;

/**
 * A whole number from which others are taken off, as long as it does not fall below 0: the way from
 * an index to its variation. In digits like {@link Wide}, so that taking off makes no objects.
 */
final class Rest {
    private static final long DIGIT = (1L << Wide.DIGIT_BITS) - 1;

    private long[] digits;
    private long[] spare;

    Rest(BigInteger number) {
        Wide one = Wide.of(number);
        digits = new long[one.places()];
        spare = new long[digits.length];
        for (int p = 0; p < digits.length; p++) {
            digits[p] = one.digits[p][0];
        }
    }

    /** Takes a number off; where it is more than what is left, leaves that and answers false. */
    boolean takeOff(Wide numbers, int index) {
        long carry = 0;
        for (int p = 0; p < digits.length; p++) {
            long digit = p < numbers.places() ? numbers.digits[p][index] : 0;
            long left = digits[p] - digit + carry;
            spare[p] = left & DIGIT;
            carry = left >> Wide.DIGIT_BITS;
        }
        for (int p = digits.length; p < numbers.places(); p++) {
            // What has no digit here can only take the rest below 0.
            carry -= numbers.digits[p][index];
        }
        return carry == 0 && swap();
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
