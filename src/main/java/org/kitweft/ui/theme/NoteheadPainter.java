package org.kitweft.ui.theme;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.kitweft.kit.Notehead;

/**
 * Paints noteheads as filled shapes big enough to hold a letter: round for drums, a cross of four
 * petals for cymbals, a diamond for bells and so on. The shape tells the notehead, the colour the
 * limb.
 */
public final class NoteheadPainter {
    private NoteheadPainter() {}

    /**
     * Paints one notehead.
     *
     * @param x centre
     * @param y centre
     * @param size width and height in pixels of the graphics
     */
    public static void paint(
            Graphics2D g,
            Notehead notehead,
            double x,
            double y,
            double size,
            Color fill,
            Color edge) {
        Shape shape = shape(notehead, x, y, size);
        g.setColor(fill);
        g.fill(shape);
        g.setColor(edge);
        g.setStroke(new BasicStroke((float) Math.max(1, size / 16)));
        g.draw(shape);
        if (notehead == Notehead.CIRCLE_X) {
            double r = size * 0.56;
            g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        }
    }

    /** The outline of a notehead around a centre. */
    public static Shape shape(Notehead notehead, double x, double y, double size) {
        double r = size / 2;
        return switch (notehead) {
            case NORMAL -> new Ellipse2D.Double(x - r, y - r, size, size);
            case X, CIRCLE_X -> saltire(x, y, r);
            case DIAMOND -> polygon(x, y, r * 1.12, 4, 0);
            case TRIANGLE -> polygon(x, y + r * 0.12, r * 1.18, 3, 0);
            case SQUARE -> new Rectangle2D.Double(x - r * 0.86, y - r * 0.86, r * 1.72, r * 1.72);
            case SLASH -> slash(x, y, r);
            case CROSS -> turned(saltire(x, y, r), x, y);
        };
    }

    private static Shape turned(Shape shape, double x, double y) {
        return AffineTransform.getRotateInstance(Math.PI / 4, x, y).createTransformedShape(shape);
    }

    private static Shape polygon(double x, double y, double r, int corners, double turn) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners; i++) {
            double angle = turn + 2 * Math.PI * i / corners - Math.PI / 2;
            double px = x + r * Math.cos(angle);
            double py = y + r * Math.sin(angle);
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }

    /** A square whose sides are drawn in: four corners reach out, the middle holds a letter. */
    private static Shape saltire(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        double in = r * 0.62;
        path.moveTo(x - r, y - r);
        path.quadTo(x, y - in * 0.72, x + r, y - r);
        path.quadTo(x + in * 0.72, y, x + r, y + r);
        path.quadTo(x, y + in * 0.72, x - r, y + r);
        path.quadTo(x - in * 0.72, y, x - r, y - r);
        path.closePath();
        return path;
    }

    private static Shape slash(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - r * 0.45, y - r);
        path.lineTo(x + r * 1.1, y - r);
        path.lineTo(x + r * 0.45, y + r);
        path.lineTo(x - r * 1.1, y + r);
        path.closePath();
        return path;
    }
}
