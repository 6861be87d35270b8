package org.kitweft.score.engrave;

import java.awt.geom.Path2D;

/** Curved signs. */
final class Curves {
    private Curves() {}

    /**
     * A tie from 0, 0 to {@code length}, 0, swelling towards its middle.
     *
     * @param side 1 bends down, -1 up
     */
    static Path2D tie(double length, double side, double endThickness, double midThickness) {
        double height = side * Math.min(0.9, 0.25 + length * 0.12) * 4 / 3;
        double thick = side * midThickness * 4 / 3;
        Path2D path = new Path2D.Double();
        path.moveTo(0, 0);
        path.curveTo(length * 0.25, height, length * 0.75, height, length, 0);
        path.lineTo(length, side * endThickness);
        path.curveTo(
                length * 0.75,
                height + thick,
                length * 0.25,
                height + thick,
                0,
                side * endThickness);
        path.closePath();
        return path;
    }
}
