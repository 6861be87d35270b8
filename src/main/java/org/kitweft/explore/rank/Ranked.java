package org.kitweft.explore.rank;

import java.util.Comparator;
import java.util.Objects;
import org.kitweft.explore.trellis.Variation;

/**
 * A variation that was looked at.
 *
 * @param variation which
 * @param score how well it serves the role, 0 to 1
 * @param cm how far its limbs travel in all
 * @param playable whether its groove has no conflicts, as a doubling or a layer can bring them
 */
public record Ranked(Variation variation, double score, double cm, boolean playable) {
    /**
     * Those without conflicts first, then the better, then those that travel less, then by number:
     * no two variations are equal.
     */
    public static final Comparator<Ranked> BEST_FIRST =
            Comparator.comparing(Ranked::playable)
                    .thenComparingDouble(Ranked::score)
                    .reversed()
                    .thenComparingDouble(Ranked::cm)
                    .thenComparing(ranked -> ranked.variation().index());

    public Ranked {
        Objects.requireNonNull(variation, "variation");
    }
}
