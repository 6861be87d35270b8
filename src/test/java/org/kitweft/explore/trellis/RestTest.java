package org.kitweft.explore.trellis;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RestTest {
    /** The JDK's BigInteger is the judge; digits beyond the base stand for sums not yet carried. */
    @Test
    void takesOffAsLongAsThereIsEnough() {
        SplittableRandom random = new SplittableRandom(48);
        for (int i = 0; i < 2000; i++) {
            BigInteger left = number(random);
            Rest rest = new Rest(left);
            for (int j = 0; j < 10; j++) {
                Wide numbers = Wide.zero(2, random.nextInt(1, 5));
                for (long[] digit : numbers.digits) {
                    digit[1] = random.nextLong(1L << random.nextInt(62));
                }
                boolean enough = numbers.get(1).compareTo(left) <= 0;
                assertThat(rest.takeOff(numbers, 1)).isEqualTo(enough);
                left = enough ? left.subtract(numbers.get(1)) : left;
                BigInteger sum = number(random);
                boolean more = sum.compareTo(left) <= 0;
                assertThat(rest.takeOff(uncarried(sum, random), 1, 2, 6)).isEqualTo(more);
                left = more ? left.subtract(sum) : left;
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

    /** Six digits of a number at every second place from 1 on, with carries back and forth. */
    private static long[] uncarried(BigInteger number, SplittableRandom random) {
        long[] sums = new long[12];
        Wide carried = Wide.of(number);
        for (int p = 0; p < 6; p++) {
            sums[1 + 2 * p] += p < carried.places() ? carried.digits[p][0] : 0;
            long over = p < 5 ? random.nextLong(-1000, 1000) : 0;
            sums[1 + 2 * p] -= over << Wide.DIGIT_BITS;
            sums[Math.min(11, 3 + 2 * p)] += over;
        }
        return sums;
    }

    private static BigInteger number(SplittableRandom random) {
        byte[] bytes = new byte[random.nextInt(30)];
        random.nextBytes(bytes);
        return new BigInteger(1, bytes);
    }
}
