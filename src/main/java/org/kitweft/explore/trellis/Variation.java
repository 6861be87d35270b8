package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.List;
import java.util.Objects;
import org.kitweft.kit.SoundName;

/**
 * One of the possibilities: a sound for each stroke that is played.
 *
 * @param index its place among all, from 0, in the order of the first stroke's choices, then the
 *     second's, and so on
 * @param sounds for each stroke that is played, in order; rests and tacet letters have none
 */
public record Variation(BigInteger index, List<SoundName> sounds) {
    public Variation {
        Objects.requireNonNull(index, "index");
        sounds = List.copyOf(sounds);
        if (index.signum() < 0) {
            throw new IllegalArgumentException(
                    "variation %d: expected an index of 0 or more".formatted(index));
        }
    }
}
