package org.kitweft.explore;

import java.math.BigInteger;

/** Counts patterns that may start anywhere. */
public final class Necklaces {
    private Necklaces() {}

    /**
     * Counts the patterns of {@code strokes} strokes, each with {@code choices} choices, that still
     * differ when one may start anywhere: the orbits of the words under rotation.
     *
     * <p>Burnside's lemma: (1/n) &Sigma; &phi;(d) k<sup>n/d</sup> over the divisors d of n. Source:
     * Graham, Knuth, Patashnik, <i>Concrete Mathematics</i>, 2nd ed., &sect;4.9. Exact at any size;
     * one power for each divisor. No strokes make one pattern, the empty one.
     *
     * @throws IllegalArgumentException if strokes is negative, or choices is negative
     */
    public static BigInteger count(int strokes, long choices) {
        if (strokes < 0 || choices < 0) {
            throw new IllegalArgumentException(
                    "%d strokes of %d choices: expected at least 0 of each"
                            .formatted(strokes, choices));
        }
        if (strokes == 0) {
            return BigInteger.ONE;
        }
        BigInteger fixed = BigInteger.ZERO;
        BigInteger base = BigInteger.valueOf(choices);
        for (int d = 1; d <= strokes; d++) {
            if (strokes % d == 0) {
                fixed = fixed.add(base.pow(strokes / d).multiply(BigInteger.valueOf(totient(d))));
            }
        }
        return fixed.divide(BigInteger.valueOf(strokes));
    }

    /** Euler's totient: how many of 1 to n have no divisor in common with n. */
    private static int totient(int n) {
        int result = n;
        int rest = n;
        for (int prime = 2; prime * prime <= rest; prime++) {
            if (rest % prime == 0) {
                result -= result / prime;
                while (rest % prime == 0) {
                    rest /= prime;
                }
            }
        }
        return rest > 1 ? result - result / rest : result;
    }
}
