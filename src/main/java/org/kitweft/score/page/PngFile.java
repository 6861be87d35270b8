package org.kitweft.score.page;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.kitweft.file.SafeFile;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Painter;
import org.kitweft.score.engrave.Palette;

/** Writes a sheet as a picture of dots. */
public final class PngFile {
    /** Dots an inch where nothing is said: sharp on paper and on screen. */
    public static final int USUAL_DPI = 192;

    private static final double POINTS_PER_INCH = 72;
    private static final int MOST_DOTS = 100_000_000;

    private PngFile() {}

    /**
     * Writes a sheet.
     *
     * @param dpi dots an inch
     * @throws IOException in one sentence, if it cannot be written
     */
    public static void write(
            Sheet sheet,
            Fonts fonts,
            Palette palette,
            int dpi,
            Path file,
            SafeFile.Existing existing)
            throws IOException {
        BufferedImage image = image(sheet, fonts, palette, dpi);
        SafeFile.write(
                file,
                existing,
                out -> {
                    if (!ImageIO.write(image, "png", out)) {
                        throw new IOException("this Java cannot write PNG");
                    }
                });
    }

    /**
     * Paints a sheet.
     *
     * @throws IllegalArgumentException if the picture would have no dots or over 100 million
     */
    public static BufferedImage image(Sheet sheet, Fonts fonts, Palette palette, int dpi) {
        double scale = dpi / POINTS_PER_INCH;
        double width = Math.ceil(sheet.width() * scale);
        double height = Math.ceil(sheet.height() * scale);
        if (dpi < 1 || width * height > MOST_DOTS) {
            throw new IllegalArgumentException(
                    "%d dots an inch: expected 1 or more, and at most %d dots in all"
                            .formatted(dpi, MOST_DOTS));
        }
        BufferedImage image =
                new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(palette.paper());
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.scale(scale, scale);
            new Painter(fonts, palette).paint(g, sheet.signs());
        } finally {
            g.dispose();
        }
        return image;
    }
}
