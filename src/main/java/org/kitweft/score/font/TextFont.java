package org.kitweft.score.font;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Source Sans 3 in the cuts we use, and fonts of this computer for what it cannot write. Immutable.
 * Widths scale with the size exactly, since the same page is drawn at every size.
 */
public final class TextFont {
    private static final float UNITS_PER_EM = 1000;

    /** Height of a capital over the size, from the font's OS/2 table (660 of 1000). */
    public static final double CAP_HEIGHT = 0.66;

    /** How far a p reaches below the line over the size; measured on the outline. */
    public static final double DESCENT = 0.21;

    /** Stands for a character that no font has. */
    private static final String BOX = "\u25A1";

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Map<TextStyle, Font> fonts = new EnumMap<>(TextStyle.class);
    private final Map<TextStyle, double[]> asciiWidths = new EnumMap<>(TextStyle.class);

    private final SystemFonts others;

    private TextFont(SystemFonts others) {
        this.others = others;
    }

    /** Loads the fonts from the jar; this computer's are looked at when they are needed. */
    public static TextFont load() {
        return load(SystemFonts.ofThisComputer());
    }

    /** Loads the fonts from the jar, with these beside them. */
    public static TextFont load(SystemFonts others) {
        TextFont text = new TextFont(others);
        for (TextStyle style : TextStyle.values()) {
            try (InputStream in = file(style)) {
                Font font = Font.createFont(Font.TRUETYPE_FONT, in);
                text.fonts.put(style, font);
                text.asciiWidths.put(style, widths(font.deriveFont(UNITS_PER_EM)));
            } catch (IOException e) {
                throw new UncheckedIOException("the text font in the jar cannot be read", e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("the text font in the jar is not a font", e);
            }
        }
        return text;
    }

    private static double[] widths(Font font) {
        double[] widths = new double[128];
        for (char c = ' '; c < widths.length; c++) {
            widths[c] =
                    font.createGlyphVector(CONTEXT, Character.toString(c))
                                    .getGlyphMetrics(0)
                                    .getAdvanceX()
                            / UNITS_PER_EM;
        }
        return widths;
    }

    /** The font file of a cut, to embed; close it after use. */
    public static InputStream file(TextStyle style) {
        return MusicFont.open(style.file() + ".ttf");
    }

    /** The font of a cut in some size. */
    public Font font(TextStyle style, double size) {
        return Objects.requireNonNull(fonts.get(style)).deriveFont((float) size);
    }

    /** The font of a run in some size. */
    public Font font(Optional<SystemFont> other, TextStyle style, double size) {
        return other.map(system -> system.font().deriveFont((float) size))
                .orElseGet(() -> font(style, size));
    }

    /** The outline of a run, from the left end of its base line. */
    public Path2D outline(Optional<SystemFont> other, TextStyle style, double size, String text) {
        if (text.isEmpty()) {
            return new Path2D.Double();
        }
        // As large as the outlines were drawn, so that they come out unrounded.
        Font font = font(other, style, UNITS_PER_EM);
        Path2D large = new Path2D.Double(new TextLayout(text, font, CONTEXT).getOutline(null));
        large.transform(AffineTransform.getScaleInstance(size / UNITS_PER_EM, size / UNITS_PER_EM));
        return large;
    }

    /** Width of a text in some size. */
    public double width(TextStyle style, double size, String text) {
        double[] ascii = Objects.requireNonNull(asciiWidths.get(style));
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ascii.length || c < ' ') {
                return runs(style, text).stream().mapToDouble(r -> width(r, style, size)).sum();
            }
            width += ascii[c];
        }
        return width * size;
    }

    /** Width of a run in some size. */
    public double width(TextRun run, TextStyle style, double size) {
        Font font = font(run.font(), style, UNITS_PER_EM);
        return size * font.getStringBounds(run.text(), CONTEXT).getWidth() / UNITS_PER_EM;
    }

    /**
     * The text in pieces that one font each can write, in order. A control character is a space; a
     * character that no font has is a box.
     */
    public List<TextRun> runs(TextStyle style, String text) {
        Font own = Objects.requireNonNull(fonts.get(style));
        if (own.canDisplayUpTo(text) < 0 && text.chars().noneMatch(Character::isISOControl)) {
            return List.of(new TextRun(text, Optional.empty(), ""));
        }
        RunCollector runs = new RunCollector();
        text.codePoints()
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .forEach(
                        c -> {
                            String character = Character.toString(c);
                            if (runs.font().isPresent() && joins(c, runs.font().get())) {
                                runs.add(character, runs.font(), "");
                            } else if (own.canDisplay(c)) {
                                runs.add(character, Optional.empty(), "");
                            } else {
                                Optional<SystemFont> other =
                                        others.with(c, style != TextStyle.REGULAR);
                                if (other.isPresent()) {
                                    runs.add(character, other, "");
                                } else {
                                    runs.add(BOX, Optional.empty(), character);
                                }
                            }
                        });
        return runs.done();
    }

    /** Spaces and signs between the words of another script stay with it: it may run leftwards. */
    private static boolean joins(int c, SystemFont font) {
        Character.UnicodeScript script = Character.UnicodeScript.of(c);
        boolean latin = script == Character.UnicodeScript.LATIN || Character.isDigit(c);
        return !latin && font.font().canDisplay(c);
    }
}
