package org.kitweft.ui.groove;

import java.util.List;
import java.util.OptionalInt;
import org.kitweft.groove.Conflict;
import org.kitweft.groove.Hit;

/**
 * A hit in the grid.
 *
 * @param hit what is struck
 * @param row its row, from 0; a hit whose sound the kit does not have has none and no mark
 * @param column where it is written, in steps from the start of the groove; between two whole
 *     numbers where a layer has other steps than the sticking
 * @param layer index of the layer it comes from, if it comes from one
 * @param moved whether its stroke has a sound of its own
 * @param conflicts what keeps it from being played
 */
public record GridMark(
        Hit hit,
        int row,
        double column,
        OptionalInt layer,
        boolean moved,
        List<Conflict> conflicts) {
    public GridMark {
        conflicts = List.copyOf(conflicts);
    }
}
