package org.kitweft.explore.trellis;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RestTest {
    private static final int PLACES = 6;

    /** The JDK's BigInteger is the judge. */
    @Test
    void takesOffAsLongAsThereIsEnough() {
        SplittableRandom random = new SplittableRandom(48);
        for (int i = 0; i < 2000; i++) {
            BigInteger left = number(random);
            Rest rest = new Rest(left);
            for (int j = 0; j < 10; j++) {
                BigInteger apart = number(random);
                boolean enough = apart.compareTo(left) <= 0;
                assertThat(rest.takeOff(apart(apart), 1, 2, PLACES)).isEqualTo(enough);
                left = enough ? left.subtract(apart) : left;
                BigInteger other = number(random);
                boolean again = other.compareTo(left) <= 0;
                assertThat(rest.takeOff(other)).isEqualTo(again);
                left = again ? left.subtract(other) : left;
            }
            assertThat(rest.takeOff(left.add(BigInteger.ONE))).isFalse();
            assertThat(rest.takeOff(left)).isTrue();
            assertThat(rest.takeOff(BigInteger.ONE)).isFalse();
        }
    }

    /** The digits of a number at every second place from 1 on. */
    private static long[] apart(BigInteger number) {
        long[] digits = new long[2 * PLACES];
        BigInteger base = BigInteger.ONE.shiftLeft(Wide.DIGIT_BITS);
        BigInteger rest = number;
        for (int at = 1; at < digits.length; at += 2) {
            digits[at] = rest.mod(base).longValueExact();
            rest = rest.divide(base);
        }
        return digits;
    }

    private static BigInteger number(SplittableRandom random) {
        byte[] bytes = new byte[random.nextInt(30)];
        random.nextBytes(bytes);
        return new BigInteger(1, bytes);
    }
}
