package org.kitweft.explore.search;

import java.util.List;
import java.util.Optional;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Stroke;

/**
 * What one stroke of the sticking may be.
 *
 * @param letter empty: a rest
 * @param dynamic of the stroke
 * @param ornament of the stroke
 * @param passes how it produces its step in each pass of the sticking through a period
 */
record Choice(Optional<Letter> letter, Dynamic dynamic, Ornament ornament, List<Fit> passes) {
    /** A rest. */
    static final Choice REST =
            new Choice(Optional.empty(), Dynamic.PLAIN, Ornament.NONE, List.of());

    /** Whether it is R and L at once and in every pass both on one sound. */
    boolean isUnison() {
        return !passes.isEmpty() && passes.stream().allMatch(Fit::isUnison);
    }

    Stroke stroke() {
        return letter.map(l -> Stroke.of(l, dynamic, ornament)).orElse(Stroke.REST);
    }
}
