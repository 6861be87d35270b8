package org.kitweft.score.font;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Bravura: the outline of each glyph, where stems join it, and how thick lines are.
 *
 * <p>All lengths are staff spaces; y grows downwards, as on screen, so the font's own y is turned.
 * Immutable; outlines must not be changed by whoever gets them.
 */
public final class MusicFont {
    /** SMuFL 1.4: an em is four staff spaces. */
    private static final int SPACES_PER_EM = 4;

    /** Units per em of the font, so that outlines come out unrounded. */
    private static final float UNITS_PER_EM = 1000;

    private final Map<Glyph, Path2D> outlines = new EnumMap<>(Glyph.class);
    private final Map<Glyph, Rectangle2D> bounds = new EnumMap<>(Glyph.class);
    private final Map<Glyph, Double> advances = new EnumMap<>(Glyph.class);
    private final JsonNode metadata;

    private MusicFont(Font font, JsonNode metadata) {
        this.metadata = metadata;
        FontRenderContext context = new FontRenderContext(null, true, true);
        Font large = font.deriveFont(UNITS_PER_EM);
        double scale = SPACES_PER_EM / UNITS_PER_EM;
        AffineTransform toSpaces = AffineTransform.getScaleInstance(scale, scale);
        for (Glyph glyph : Glyph.values()) {
            var vector = large.createGlyphVector(context, Character.toString(glyph.codePoint()));
            Path2D outline = new Path2D.Double(vector.getOutline(), toSpaces);
            outlines.put(glyph, outline);
            bounds.put(glyph, outline.getBounds2D());
            advances.put(glyph, vector.getGlyphMetrics(0).getAdvanceX() * scale);
        }
    }

    /** Loads the font from the jar; takes some tens of milliseconds, so keep what you get. */
    public static MusicFont load() {
        try (InputStream font = open("Bravura.otf");
                InputStream metadata = open("Bravura-metadata.json")) {
            return new MusicFont(
                    Font.createFont(Font.TRUETYPE_FONT, font),
                    new ObjectMapper().readTree(metadata));
        } catch (IOException e) {
            throw new UncheckedIOException("the music font in the jar cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the music font in the jar is not a font", e);
        }
    }

    static InputStream open(String name) {
        return Objects.requireNonNull(MusicFont.class.getResourceAsStream(name), name);
    }

    /** The outline with the glyph's origin at 0, 0. */
    public Path2D outline(Glyph glyph) {
        return get(outlines, glyph);
    }

    /** The box around the outline. */
    public Rectangle2D bounds(Glyph glyph) {
        return get(bounds, glyph);
    }

    /** How far the next glyph of a row stands. */
    public double advance(Glyph glyph) {
        return get(advances, glyph);
    }

    private static <T> T get(Map<Glyph, T> map, Glyph glyph) {
        return Objects.requireNonNull(map.get(glyph), glyph.smuflName());
    }

    /** A point of the glyph that other signs join, e.g. {@code stemUpSE}. */
    public Optional<Point2D> anchor(Glyph glyph, String name) {
        JsonNode point = metadata.path("glyphsWithAnchors").path(glyph.smuflName()).path(name);
        return point.isMissingNode()
                ? Optional.empty()
                : Optional.of(
                        new Point2D.Double(point.get(0).asDouble(), -point.get(1).asDouble()));
    }

    /**
     * A width that the font recommends, e.g. {@code stemThickness}.
     *
     * @throws IllegalArgumentException if it names none such
     */
    public double recommended(String name) {
        JsonNode value = metadata.path("engravingDefaults").path(name);
        if (!value.isNumber()) {
            throw new IllegalArgumentException("the font recommends no " + name);
        }
        return value.asDouble();
    }
}
