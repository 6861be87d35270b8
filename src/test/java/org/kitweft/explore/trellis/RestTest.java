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

    private static BigInteger number(SplittableRandom random) {
        byte[] bytes = new byte[random.nextInt(30)];
        random.nextBytes(bytes);
        return new BigInteger(1, bytes);
    }
}
