package org.kitweft.explore.trellis;

import java.math.BigInteger;

/**
 * A sum of products of {@linkplain Wide#carried() carried} numbers: in digits, so that adding makes
 * no objects. Holds for up to 2^31 products.
 */
final class Products {
    /** For each power of the base what its digit comes to: 64 bits unsigned, and the rest. */
    private final long[] lows;

    private final long[] highs;

    /**
     * Nothing yet.
     *
     * @param places of the one and of the other, added up
     */
    Products(int places) {
        lows = new long[places - 1];
        highs = new long[places - 1];
    }

    /** Adds the product of two numbers. */
    void add(Wide one, int index, Wide other, int otherIndex) {
        for (int p = 0; p < one.places(); p++) {
            long a = one.digits[p][index];
            for (int q = 0; a != 0 && q < other.places(); q++) {
                long b = other.digits[q][otherIndex];
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

    BigInteger sum() {
        BigInteger sum = BigInteger.ZERO;
        for (int p = 0; p < lows.length; p++) {
            BigInteger unsigned = new BigInteger(Long.toUnsignedString(lows[p]));
            BigInteger digit = BigInteger.valueOf(highs[p]).shiftLeft(Long.SIZE).add(unsigned);
            sum = sum.add(digit.shiftLeft(p * Wide.DIGIT_BITS));
        }
        return sum;
    }
}
