package org.kitweft.explore.search;

import java.util.ArrayList;
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
        List<Integer> sounds = new ArrayList<>();
        List<Ornament> ornaments = new ArrayList<>();
        for (int i = 0; i < numbers.length; i++) {
            if (strikes.get(i).dynamic() != strikes.get(0).dynamic()) {
                return TORN;
            }
            sounds.add(numbers[i]);
            ornaments.add(strikes.get(i).ornament());
        }
        Optional<Dynamic> dynamic =
                strikes.isEmpty() ? Optional.empty() : Optional.of(strikes.get(0).dynamic());
        return new Cell(List.copyOf(sounds), dynamic, List.copyOf(ornaments), false);
    }

    boolean silent() {
        return sounds.isEmpty() && !torn;
    }
}
