package org.kitweft.explore.rank;

import java.math.BigInteger;
import java.util.List;
import java.util.Objects;

/**
 * How a ranking stands: what is best so far, and of how many.
 *
 * @param best in the order of {@link Ranked#BEST_FIRST}, no more than were asked for
 * @param looked how many different variations were looked at
 * @param total how many there are
 */
public record Standing(List<Ranked> best, int looked, BigInteger total) {
    public Standing {
        best = List.copyOf(best);
        Objects.requireNonNull(total, "total");
    }

    /** Whether all were looked at: then the ranking is exact. */
    public boolean isComplete() {
        return BigInteger.valueOf(looked).equals(total);
    }
}
