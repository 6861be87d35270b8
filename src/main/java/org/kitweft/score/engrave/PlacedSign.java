package org.kitweft.score.engrave;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.Objects;

/**
 * A sign and where it stands.
 *
 * @param kind what it is
 * @param ink what it is drawn with
 * @param x where the origin of its ink is
 * @param y where the origin of its ink is
 * @param bounds the box around what is inked; for text from its descent to its capitals
 * @param owner what it belongs to
 */
public record PlacedSign(Kind kind, Ink ink, double x, double y, Rectangle2D bounds, Owner owner) {
    public PlacedSign {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(owner, "owner");
        bounds = (Rectangle2D) bounds.clone();
    }

    @Override
    public Rectangle2D bounds() {
        return (Rectangle2D) bounds.clone();
    }

    /** The same sign on a sheet: scaled, then moved. */
    public PlacedSign moved(double scale, double dx, double dy) {
        Ink scaled;
        if (ink instanceof Ink.OfGlyph glyph) {
            scaled = new Ink.OfGlyph(glyph.glyph(), glyph.scale() * scale);
        } else if (ink instanceof Ink.OfText text) {
            scaled =
                    new Ink.OfText(
                            text.text(),
                            text.style(),
                            text.size() * scale,
                            text.colour(),
                            text.font());
        } else {
            Ink.OfShape shape = (Ink.OfShape) ink;
            scaled =
                    new Ink.OfShape(
                            new Path2D.Double(
                                    shape.path(), AffineTransform.getScaleInstance(scale, scale)),
                            shape.colour());
        }
        return new PlacedSign(
                kind,
                scaled,
                x * scale + dx,
                y * scale + dy,
                new Rectangle2D.Double(
                        bounds.getX() * scale + dx,
                        bounds.getY() * scale + dy,
                        bounds.getWidth() * scale,
                        bounds.getHeight() * scale),
                owner);
    }

    /** One line for people and golden files, lengths to a hundredth. */
    public String line() {
        String what;
        if (ink instanceof Ink.OfGlyph glyph) {
            what = glyph.glyph().smuflName() + (glyph.scale() == 1 ? "" : scaleText(glyph));
        } else if (ink instanceof Ink.OfText text) {
            what = "\"" + text.text() + "\"";
        } else {
            what = String.format(Locale.ROOT, "%.2f x %.2f", bounds.getWidth(), bounds.getHeight());
        }
        return String.format(
                Locale.ROOT,
                "%s %s at %.2f %.2f%s",
                kind.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                what,
                bounds.getX() + 0.0,
                bounds.getY() + 0.0,
                owner.equals(Owner.NONE)
                        ? ""
                        : " bar %d voice %d tick %d"
                                .formatted(owner.measure(), owner.voice(), owner.tick()));
    }

    private static String scaleText(Ink.OfGlyph glyph) {
        return String.format(Locale.ROOT, " * %.2f", glyph.scale());
    }
}
