package org.kitweft.cli;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.kitweft.kit.Notehead;

/** Noteheads as simple outlines to be filled, around a centre; sizes in pixels. */
final class NoteheadShapes {
    private NoteheadShapes() {}

    static Shape of(Notehead head, double x, double y, double size) {
        double h = size / 2;
        return switch (head) {
            case NORMAL -> new Ellipse2D.Double(x - h, y - h * 0.85, size, size * 0.85);
            case X -> strokes(size, x - h, y - h, x + h, y + h, x - h, y + h, x + h, y - h);
            case CROSS -> strokes(size, x - h, y, x + h, y, x, y - h, x, y + h);
            case SLASH -> strokes(size * 1.4, x - h, y + h, x + h, y - h);
            case CIRCLE_X -> circleX(x, y, size);
            case DIAMOND -> polygon(x, y - h * 1.15, x + h, y, x, y + h * 1.15, x - h, y);
            case TRIANGLE -> polygon(x, y - h, x + h, y + h * 0.8, x - h, y + h * 0.8);
            case SQUARE -> new Rectangle2D.Double(x - h, y - h, size, size);
        };
    }

    private static Shape circleX(double x, double y, double size) {
        double h = size / 2;
        double inner = h * 0.55;
        Area area =
                new Area(
                        strokes(
                                size * 0.8,
                                x - inner,
                                y - inner,
                                x + inner,
                                y + inner,
                                x - inner,
                                y + inner,
                                x + inner,
                                y - inner));
        Shape ring = new Ellipse2D.Double(x - h, y - h, size, size);
        area.add(new Area(new BasicStroke((float) (size * 0.13)).createStrokedShape(ring)));
        return area;
    }

    /** Straight strokes, four numbers each. */
    private static Shape strokes(double size, double... ends) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < ends.length; i += 4) {
            path.moveTo(ends[i], ends[i + 1]);
            path.lineTo(ends[i + 2], ends[i + 3]);
        }
        return new BasicStroke((float) (size * 0.2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                .createStrokedShape(path);
    }

    private static Shape polygon(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }
}
