package org.kitweft.ui.play;

/**
 * Some bars of what plays, to be played alone.
 *
 * @param first from 1
 * @param last not before the first
 */
public record Bars(int first, int last) {
    public Bars {
        if (first < 1 || last < first) {
            throw new IllegalArgumentException(
                    "bars %d to %d: expected a first from 1, a last not before it"
                            .formatted(first, last));
        }
    }
}
