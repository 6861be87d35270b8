package org.kitweft.score.page;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUnits;
import org.kitweft.file.SafeFile;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Painter;
import org.kitweft.score.engrave.Palette;

/**
 * Writes a sheet as Scalable Vector Graphics. Words stay text; the reader's own font shows them.
 */
public final class SvgFile {
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
        g.setFontFunction(family -> family.startsWith("Source Sans 3") ? FAMILY : family);
        g.setColor(palette.paper());
        g.fill(new Rectangle2D.Double(0, 0, sheet.width(), sheet.height()));
        new Painter(fonts, palette).paint(g, sheet.signs());
        return g.getSVGDocument();
    }

    private static final String FAMILY = "Source Sans 3, Helvetica, Arial, sans-serif";
}
