package org.kitweft.score.page;

import java.util.List;
import org.kitweft.score.engrave.PlacedSign;

/**
 * One side of paper: signs in points, from the upper left corner.
 *
 * @param width in points
 * @param height in points
 * @param signs in drawing order, which is reading order as well
 */
public record Sheet(double width, double height, List<PlacedSign> signs) {
    public Sheet {
        signs = List.copyOf(signs);
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException(
                    "sheet of %s by %s points: expected more than 0".formatted(width, height));
        }
    }
}
