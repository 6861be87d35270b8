package org.kitweft.score.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.kitweft.file.SafeFile;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Painter;
import org.kitweft.score.engrave.Palette;
import org.kitweft.score.engrave.PlacedSign;

/**
 * Writes sheets as a PDF document: vector graphics, words as text, the fonts embedded as far as
 * they are used; see {@link PdfWords} for fonts that may not be. Knows neither date nor author, so
 * that the same sheets give the same file.
 */
public final class PdfFile {
    private PdfFile() {}

    /**
     * Writes a document.
     *
     * @throws IOException in one sentence, if it cannot be written
     * @throws java.util.concurrent.CancellationException if {@code progress} stops it; the target
     *     is as it was
     */
    public static void write(
            Sheets sheets, Fonts fonts, Path file, SafeFile.Existing existing, Progress progress)
            throws IOException {
        SafeFile.write(file, existing, out -> write(sheets, fonts, out, progress));
    }

    /** Writes a document to a stream, which stays open. */
    public static void write(Sheets sheets, Fonts fonts, OutputStream out, Progress progress)
            throws IOException {
        try (PDDocument document = new PDDocument();
                PdfWords words = PdfWords.of(document, sheets)) {
            document.getDocumentInformation().setTitle(sheets.title());
            document.getDocumentInformation().setProducer("Kitweft");
            document.setDocumentId(fingerprint(sheets));
            document.getDocumentCatalog().setLanguage("en");
            Painter painter = new Painter(fonts, Palette.PRINT);
            int done = 0;
            for (Sheet sheet : sheets.sheets()) {
                progress.check(done++, sheets.sheets().size());
                page(document, sheet, painter, words);
            }
            document.save(out);
            progress.report(done, sheets.sheets().size());
        } catch (FontFormatException e) {
            throw new IllegalStateException("the text font in the jar is not a font", e);
        }
    }

    /** The same for the same sheets, on every computer; not made of the time. */
    private static long fingerprint(Sheets sheets) {
        long print = sheets.title().hashCode();
        for (Sheet sheet : sheets.sheets()) {
            for (PlacedSign sign : sheet.signs()) {
                print = 31 * print + sign.kind().name().hashCode();
                print = 31 * print + sign.bounds().hashCode();
            }
        }
        return print;
    }

    private static void page(PDDocument document, Sheet sheet, Painter painter, PdfWords words)
            throws IOException, FontFormatException {
        PDPage page = new PDPage(new PDRectangle((float) sheet.width(), (float) sheet.height()));
        document.addPage(page);
        PdfBoxGraphics2D g =
                new PdfBoxGraphics2D(document, (float) sheet.width(), (float) sheet.height());
        try {
            g.setFontTextDrawer(words);
            painter.paint(g, sheet.signs());
        } finally {
            g.dispose();
        }
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }
}
