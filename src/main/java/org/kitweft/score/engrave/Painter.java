package org.kitweft.score.engrave;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.font.TextFont;

/**
 * Paints placed signs onto any {@code Graphics2D}: a screen, an image, a PDF or SVG page. Glyphs
 * are filled outlines, so that every target shows the same; words are text, so that they can be
 * selected.
 */
public final class Painter {
    private final MusicFont music;
    private final TextFont text;
    private final Palette palette;
    private final Predicate<PlacedSign> highlighted;
    private final boolean wordsAsOutlines;

    /** Paints with these fonts and colours. */
    public Painter(Fonts fonts, Palette palette) {
        this(fonts, palette, sign -> false);
    }

    /** Paints with these fonts and colours; what is highlighted, in the highlight colour. */
    public Painter(Fonts fonts, Palette palette, Predicate<PlacedSign> highlighted) {
        this(fonts, palette, highlighted, false);
    }

    /** Paints words as filled outlines too, for targets that cannot count on the fonts. */
    public static Painter withWordsAsOutlines(Fonts fonts, Palette palette) {
        return new Painter(fonts, palette, sign -> false, true);
    }

    private Painter(
            Fonts fonts,
            Palette palette,
            Predicate<PlacedSign> highlighted,
            boolean wordsAsOutlines) {
        this.music = fonts.music();
        this.text = fonts.text();
        this.palette = Objects.requireNonNull(palette, "palette");
        this.highlighted = Objects.requireNonNull(highlighted, "highlighted");
        this.wordsAsOutlines = wordsAsOutlines;
    }

    /** Paints signs; the unit of the graphics is that of the signs. The graphics stay as found. */
    public void paint(Graphics2D graphics, Iterable<PlacedSign> signs) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(
                    RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(
                    RenderingHints.KEY_FRACTIONALMETRICS,
                    RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            for (PlacedSign sign : signs) {
                paint(g, sign);
            }
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, PlacedSign sign) {
        Color colour = highlighted.test(sign) ? palette.highlight() : palette.of(sign.kind());
        if (sign.ink() instanceof Ink.OfGlyph glyph) {
            g.setColor(colour);
            g.fill(placed(music.outline(glyph.glyph()), glyph.scale(), sign.x(), sign.y()));
        } else if (sign.ink() instanceof Ink.OfShape shape) {
            g.setColor(own(shape.colour(), colour));
            g.fill(placed(shape.path(), 1, sign.x(), sign.y()));
        } else if (sign.ink() instanceof Ink.OfText words) {
            g.setColor(own(words.colour(), colour));
            if (wordsAsOutlines) {
                g.fill(
                        placed(
                                text.outline(
                                        words.font(), words.style(), words.size(), words.text()),
                                1,
                                sign.x(),
                                sign.y()));
            } else {
                g.setFont(text.font(words.font(), words.style(), words.size()));
                g.drawString(words.text(), (float) sign.x(), (float) sign.y());
            }
        }
    }

    private static Color own(Optional<Color> own, Color otherwise) {
        return own.orElse(otherwise);
    }

    private static Path2D placed(Path2D path, double scale, double x, double y) {
        return new Path2D.Double(path, new AffineTransform(scale, 0, 0, scale, x, y));
    }
}
