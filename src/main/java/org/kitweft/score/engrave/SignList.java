package org.kitweft.score.engrave;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextRun;
import org.kitweft.score.font.TextStyle;

/** Collects signs while they are placed, and answers where there is room. Not thread-safe. */
public final class SignList {
    /** How far a straight piece may lie off its curve, in the unit of the list. */
    private static final double FLATNESS = 0.005;

    private final Fonts fonts;
    private final List<PlacedSign> signs = new ArrayList<>();
    private final Set<String> unwritable = new LinkedHashSet<>();

    /** An empty list. */
    public SignList(Fonts fonts) {
        this.fonts = fonts;
    }

    /** The fonts it measures with. */
    public Fonts fonts() {
        return fonts;
    }

    /** What was placed so far, in order. */
    public List<PlacedSign> signs() {
        return List.copyOf(signs);
    }

    /** The characters of its texts that no font has, in order of appearance. */
    public Set<String> unwritable() {
        return Collections.unmodifiableSet(unwritable);
    }

    /** Adds a sign. */
    public PlacedSign add(PlacedSign sign) {
        signs.add(sign);
        return sign;
    }

    /** A glyph with its origin at a point. */
    public PlacedSign glyph(Kind kind, Glyph glyph, double scale, double x, double y, Owner owner) {
        return add(
                new PlacedSign(
                        kind,
                        new Ink.OfGlyph(glyph, scale),
                        x,
                        y,
                        glyphBox(glyph, scale, x, y),
                        owner));
    }

    /** The box of a glyph with its origin at a point. */
    Rectangle2D glyphBox(Glyph glyph, double scale, double x, double y) {
        Rectangle2D box = fonts.music().bounds(glyph);
        return new Rectangle2D.Double(
                x + box.getX() * scale,
                y + box.getY() * scale,
                box.getWidth() * scale,
                box.getHeight() * scale);
    }

    /** An upright rectangle between two corners. */
    public PlacedSign box(Kind kind, double x1, double y1, double x2, double y2, Owner owner) {
        Path2D path = new Path2D.Double();
        path.moveTo(0, 0);
        path.lineTo(x2 - x1, 0);
        path.lineTo(x2 - x1, y2 - y1);
        path.lineTo(0, y2 - y1);
        path.closePath();
        return shape(kind, path, x1, y1, Optional.empty(), owner);
    }

    /** A polygon, given its corners. */
    PlacedSign polygon(Kind kind, List<Point2D> corners, Owner owner) {
        Point2D origin = corners.get(0);
        Path2D path = new Path2D.Double();
        path.moveTo(0, 0);
        for (Point2D corner : corners.subList(1, corners.size())) {
            path.lineTo(corner.getX() - origin.getX(), corner.getY() - origin.getY());
        }
        path.closePath();
        return shape(kind, path, origin.getX(), origin.getY(), Optional.empty(), owner);
    }

    /** Any shape, placed at a point. */
    public PlacedSign shape(
            Kind kind, Path2D path, double x, double y, Optional<Color> colour, Owner owner) {
        Rectangle2D box = inked(path);
        return add(
                new PlacedSign(
                        kind,
                        new Ink.OfShape(path, colour),
                        x,
                        y,
                        new Rectangle2D.Double(
                                box.getX() + x, box.getY() + y, box.getWidth(), box.getHeight()),
                        owner));
    }

    /** The box around a path's ink: that of Java before 19 holds the control points as well. */
    private static Rectangle2D inked(Path2D path) {
        Path2D flat = new Path2D.Double();
        flat.append(path.getPathIterator(null, FLATNESS), false);
        return flat.getBounds2D();
    }

    /** A line of text from the left end of its base line. */
    public void text(
            Kind kind, String text, TextStyle style, double size, double x, double y, Owner owner) {
        text(kind, text, style, size, x, y, Optional.empty(), owner);
    }

    /** A line of text in a colour of its own: a sign for each run of one font. */
    public void text(
            Kind kind,
            String words,
            TextStyle style,
            double size,
            double x,
            double y,
            Optional<Color> colour,
            Owner owner) {
        double up = TextFont.CAP_HEIGHT * size;
        double down = TextFont.DESCENT * size;
        double at = x;
        List<TextRun> runs = fonts.text().runs(style, words);
        for (TextRun run : runs) {
            double width =
                    runs.size() == 1
                            ? fonts.text().width(style, size, words)
                            : fonts.text().width(run, style, size);
            add(
                    new PlacedSign(
                            kind,
                            new Ink.OfText(run.text(), style, size, colour, run.font()),
                            at,
                            y,
                            new Rectangle2D.Double(at, y - up, width, up + down),
                            owner));
            run.unwritable().codePoints().mapToObj(Character::toString).forEach(unwritable::add);
            at += width;
        }
    }

    /** A line of text around a middle. */
    public void centred(
            Kind kind,
            String text,
            TextStyle style,
            double size,
            double middle,
            double y,
            Owner owner) {
        double width = fonts.text().width(style, size, text);
        text(kind, text, style, size, middle - width / 2, y, owner);
    }

    /** The highest point inked between two x, at most {@code otherwise}. */
    double top(double x1, double x2, double otherwise) {
        double top = otherwise;
        for (PlacedSign sign : signs) {
            Rectangle2D box = sign.bounds();
            if (box.getMaxX() > x1 && box.getMinX() < x2) {
                top = Math.min(top, box.getMinY());
            }
        }
        return top;
    }

    /** The lowest point inked between two x, at least {@code otherwise}. */
    double bottom(double x1, double x2, double otherwise) {
        double bottom = otherwise;
        for (PlacedSign sign : signs) {
            Rectangle2D box = sign.bounds();
            if (box.getMaxX() > x1 && box.getMinX() < x2) {
                bottom = Math.max(bottom, box.getMaxY());
            }
        }
        return bottom;
    }

    /** Whether anything of some kinds is inked in a box. */
    boolean inked(Rectangle2D box, Predicate<Kind> kinds) {
        for (PlacedSign sign : signs) {
            if (kinds.test(sign.kind()) && sign.bounds().intersects(box)) {
                return true;
            }
        }
        return false;
    }
}
