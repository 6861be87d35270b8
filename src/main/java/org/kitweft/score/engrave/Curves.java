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
        double height = Math.min(0.9, 0.25 + length * 0.12);
        return bow(length, 0, side * height, endThickness, midThickness);
    }

    /**
     * A bow from 0, 0 to {@code dx}, {@code dy}, swelling towards its middle.
     *
     * @param height how far its middle lies beyond the straight line; negative: above it
     */
    static Path2D bow(
            double dx, double dy, double height, double endThickness, double midThickness) {
        double side = Math.signum(height);
        // The middle of such a curve lies three quarters of the way to its inner points.
        double inner = height * 4 / 3;
        double outer = inner + side * midThickness * 4 / 3;
        Path2D path = new Path2D.Double();
        path.moveTo(0, 0);
        path.curveTo(dx * 0.25, dy * 0.25 + inner, dx * 0.75, dy * 0.75 + inner, dx, dy);
        path.lineTo(dx, dy + side * endThickness);
        path.curveTo(
                dx * 0.75, dy * 0.75 + outer, dx * 0.25, dy * 0.25 + outer, 0, side * endThickness);
        path.closePath();
        return path;
    }
}
