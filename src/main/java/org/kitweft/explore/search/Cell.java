package org.kitweft.explore.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * What one step asks of the sticking: sounds by number, their common dynamic, their ornaments.
 *
 * @param sounds by number, ascending; empty: silence
 * @param dynamic empty for silence
 * @param ornaments one for each sound
 * @param torn whether nothing can produce it: asks for two things at once, or for two dynamics,
 *     which no one stroke has
 */
record Cell(
        List<Integer> sounds, Optional<Dynamic> dynamic, List<Ornament> ornaments, boolean torn) {
    /** What no stroke and no rest produces. */
    static final Cell TORN = new Cell(List.of(), Optional.empty(), List.of(), true);

    static Cell of(int[] numbers, List<Strike> strikes) {
        if (strikes.stream().map(Strike::dynamic).distinct().count() > 1) {
            return TORN;
        }
        return new Cell(
                Arrays.stream(numbers).boxed().toList(),
                strikes.stream().map(Strike::dynamic).findFirst(),
                strikes.stream().map(Strike::ornament).toList(),
                false);
    }

    boolean silent() {
        return sounds.isEmpty() && !torn;
    }
}
