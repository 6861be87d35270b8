package org.kitweft.score.page;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUnits;
import org.kitweft.file.SafeFile;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Ink;
import org.kitweft.score.engrave.Painter;
import org.kitweft.score.engrave.Palette;
import org.kitweft.score.engrave.PlacedSign;

/**
 * Writes a sheet as Scalable Vector Graphics. Words are outlines, since many programs that read SVG
 * look at the computer's own fonts only; over them the same words lie as text without ink, to be
 * found, selected and read aloud.
 */
public final class SvgFile {
    private static final Color NO_INK = new Color(0, 0, 0, 0);
    private static final String FAMILY = "Source Sans 3, Helvetica, Arial, sans-serif";

    private SvgFile() {}

    /**
     * Writes a sheet.
     *
     * @throws IOException in one sentence, if it cannot be written
     */
    public static void write(
            Sheet sheet, Fonts fonts, Palette palette, Path file, SafeFile.Existing existing)
            throws IOException {
        byte[] svg = text(sheet, fonts, palette).getBytes(StandardCharsets.UTF_8);
        SafeFile.write(file, existing, out -> out.write(svg));
    }

    /** The sheet as text. */
    public static String text(Sheet sheet, Fonts fonts, Palette palette) {
        SVGGraphics2D g = new SVGGraphics2D(sheet.width(), sheet.height(), SVGUnits.PT);
        // Names of definitions are made of the time otherwise; the same sheet gives the same file.
        g.setDefsKeyPrefix("kitweft");
        g.setGeomDoubleConverter(SvgFile::rounded);
        g.setTransformDoubleConverter(SvgFile::rounded);
        g.setFontFunction(family -> family.startsWith("Source Sans 3") ? FAMILY : family);
        g.setColor(palette.paper());
        g.fill(new Rectangle2D.Double(0, 0, sheet.width(), sheet.height()));
        Painter.withWordsAsOutlines(fonts, palette).paint(g, sheet.signs());
        g.setColor(NO_INK);
        for (PlacedSign sign : sheet.signs()) {
            if (sign.ink() instanceof Ink.OfText words) {
                g.setFont(fonts.text().font(words.font(), words.style(), words.size()));
                g.drawString(words.text(), (float) sign.x(), (float) sign.y());
            }
        }
        return g.getSVGDocument();
    }

    /** To a thousandth of a point: finer than any printer, and half as long. */
    private static String rounded(double value) {
        long thousandths = Math.round(value * 1000);
        return BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
    }
}
