package org.kitweft.score.font;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * Source Sans 3 in the cuts we use. Immutable. Widths scale with the size exactly, since the same
 * page is drawn at every size.
 */
public final class TextFont {
    private static final float UNITS_PER_EM = 1000;

    /** Height of a capital over the size, from the font's OS/2 table (660 of 1000). */
    public static final double CAP_HEIGHT = 0.66;

    /** How far a p reaches below the line over the size; measured on the outline. */
    public static final double DESCENT = 0.21;

    private static final char UNSHOWABLE = '?';

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Map<TextStyle, Font> fonts = new EnumMap<>(TextStyle.class);
    private final Map<TextStyle, double[]> asciiWidths = new EnumMap<>(TextStyle.class);

    private TextFont() {}

    /** Loads the fonts from the jar. */
    public static TextFont load() {
        TextFont text = new TextFont();
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

    /** Width of a text in some size. */
    public double width(TextStyle style, double size, String text) {
        double[] ascii = Objects.requireNonNull(asciiWidths.get(style));
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ascii.length || c < ' ') {
                return size
                        * font(style, UNITS_PER_EM).getStringBounds(text, CONTEXT).getWidth()
                        / UNITS_PER_EM;
            }
            width += ascii[c];
        }
        return width * size;
    }

    /** The text with a question mark for each character that the font has no sign for. */
    public String showable(String text) {
        Font font = Objects.requireNonNull(fonts.get(TextStyle.REGULAR));
        if (font.canDisplayUpTo(text) < 0 && text.chars().noneMatch(Character::isISOControl)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints()
                .map(c -> Character.isISOControl(c) ? ' ' : font.canDisplay(c) ? c : UNSHOWABLE)
                .forEach(shown::appendCodePoint);
        return shown.toString();
    }
}
