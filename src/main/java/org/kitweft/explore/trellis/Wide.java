package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * Many whole numbers of one size: an array of digits for each power of the base, lowest first.
 *
 * <p>Digits may grow beyond the base between two {@linkplain #carried() carries}, so that sums run
 * over plain arrays.
 */
final class Wide {
    /** Bits of a digit; the others of its 63 leave room to add without a carry. */
    static final int DIGIT_BITS = 48;

    private static final long DIGIT = (1L << DIGIT_BITS) - 1;

    final long[][] digits;

    private Wide(long[][] digits) {
        this.digits = digits;
    }

    static Wide of(long[] lowest) {
        return new Wide(new long[][] {lowest});
    }

    /** Makes digits proper ones but for the highest, which has what is over, and the sign. */
    static void carry(long[] digits, int places) {
        for (int p = 0; p + 1 < places; p++) {
            digits[p + 1] += digits[p] >> DIGIT_BITS;
            digits[p] &= DIGIT;
        }
    }

    /** One number from proper digits. */
    static BigInteger number(long[] digits) {
        BigInteger number = BigInteger.ZERO;
        for (int p = digits.length - 1; p >= 0; p--) {
            number = number.shiftLeft(DIGIT_BITS).add(BigInteger.valueOf(digits[p]));
        }
        return number;
    }

    /** The digits of each number together, lowest first, one number after the other. */
    long[] packed() {
        Wide proper = carried();
        int places = proper.places();
        long[] packed = new long[digits[0].length * places];
        for (int at = 0; at < packed.length; at++) {
            packed[at] = proper.digits[at % places][at / places];
        }
        return packed;
    }

    static Wide zero(int length, int places) {
        return new Wide(new long[places][length]);
    }

    /** This one, all zeros: the only way in which one changes. */
    Wide cleared() {
        for (long[] digit : digits) {
            Arrays.fill(digit, 0);
        }
        return this;
    }

    int places() {
        return digits.length;
    }

    /** The number at an index, if it is less than 2^63; else its lowest 64 bits. */
    long low(int index) {
        long value = 0;
        for (int p = 0; p < digits.length && p * DIGIT_BITS < Long.SIZE; p++) {
            value += digits[p][index] << (p * DIGIT_BITS);
        }
        return value;
    }

    /** The number at an index. */
    BigInteger get(int index) {
        BigInteger value = BigInteger.valueOf(digits[digits.length - 1][index]);
        for (int p = digits.length - 2; p >= 0; p--) {
            value = value.shiftLeft(DIGIT_BITS).add(BigInteger.valueOf(digits[p][index]));
        }
        return value;
    }

    /** Whether the number at an index is 0. */
    boolean isZero(int index) {
        for (long[] digit : digits) {
            if (digit[index] != 0) {
                return false;
            }
        }
        return true;
    }

    /** The same numbers with every digit below the base. */
    Wide carried() {
        long[][] carried = new long[digits.length + 1][];
        long[] carry = new long[digits[0].length];
        for (int p = 0; p < digits.length; p++) {
            long[] digit = digits[p];
            long[] clean = new long[digit.length];
            for (int x = 0; x < digit.length; x++) {
                long sum = digit[x] + carry[x];
                clean[x] = sum & DIGIT;
                carry[x] = sum >>> DIGIT_BITS;
            }
            carried[p] = clean;
        }
        long any = 0;
        for (long left : carry) {
            any |= left;
        }
        carried[digits.length] = carry;
        return new Wide(any == 0 ? Arrays.copyOf(carried, digits.length) : carried);
    }
}
