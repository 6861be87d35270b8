package org.kitweft.ui.explore;

import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import org.kitweft.kit.SoundName;
import org.kitweft.ui.count.Numbers;

/**
 * How many of the variations that keep the rules put a stroke on a sound. Immutable.
 *
 * @param total how many there are
 * @param byStroke for each stroke that is played, by its index in the sticking from 0, the
 *     variations on each sound that it may choose from
 */
public record Ways(BigInteger total, Map<Integer, Map<SoundName, BigInteger>> byStroke) {
    /** Not counted, or nothing to count. */
    public static final Ways NONE = new Ways(BigInteger.ZERO, Map.of());

    public Ways {
        byStroke = Map.copyOf(byStroke);
    }

    /** Those that put a stroke on any of these sounds; empty where the stroke is not played. */
    public Optional<BigInteger> of(int stroke, Iterable<SoundName> sounds) {
        Map<SoundName, BigInteger> own = byStroke.get(stroke);
        if (own == null || total.signum() == 0) {
            return Optional.empty();
        }
        BigInteger sum = BigInteger.ZERO;
        for (SoundName sound : sounds) {
            sum = sum.add(own.getOrDefault(sound, BigInteger.ZERO));
        }
        return Optional.of(sum);
    }

    /** Their part of all, 0 to 1. */
    public double share(BigInteger ways) {
        return Numbers.ratio(ways, total);
    }

    /** In words: {@code 4,096 of 65,536 remaining variations strike Crash here}. */
    public String words(BigInteger ways, String where) {
        return ways.signum() == 0
                ? "none of the %s remaining variations strikes %s here"
                        .formatted(Numbers.brief(total), where)
                : ways.equals(total)
                        ? "all %s remaining variations strike %s here"
                                .formatted(Numbers.brief(total), where)
                        : "%s of %s remaining variations strike %s here"
                                .formatted(Numbers.brief(ways), Numbers.brief(total), where);
    }
}
