package org.kitweft.score.page;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.Book;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Painter;
import org.kitweft.score.engrave.Palette;

/** Sends sheets to a printer. */
public final class SheetPrinter {
    private SheetPrinter() {}

    /**
     * Prints a document on the printer of a job; whoever has a window may have shown the job's
     * dialog before.
     *
     * @param job from {@link #job()}
     * @throws PrinterException in one sentence, if there is no printer or it refuses
     */
    public static void print(Sheets sheets, Fonts fonts, PrinterJob job) throws PrinterException {
        if (job.getPrintService() == null) {
            throw new PrinterException(
                    "no printer is set up on this computer; write the page as PDF instead");
        }
        job.setJobName(sheets.title().isBlank() ? "Kitweft" : sheets.title());
        job.setPageable(book(sheets, fonts));
        job.print();
    }

    /** A job on the usual printer. */
    public static PrinterJob job() {
        return PrinterJob.getPrinterJob();
    }

    /** The document as pages of its own paper, without margins: the sheets have their own. */
    public static Book book(Sheets sheets, Fonts fonts) {
        Book book = new Book();
        for (Sheet sheet : sheets.sheets()) {
            PageFormat format = new PageFormat();
            java.awt.print.Paper paper = new java.awt.print.Paper();
            paper.setSize(sheet.width(), sheet.height());
            paper.setImageableArea(0, 0, sheet.width(), sheet.height());
            format.setPaper(paper);
            book.append(printable(sheet, fonts), format);
        }
        return book;
    }

    private static Printable printable(Sheet sheet, Fonts fonts) {
        return (Graphics graphics, PageFormat format, int index) -> {
            Graphics2D g = (Graphics2D) graphics.create();
            try {
                // The printer may have other paper: fit, never enlarge.
                double scale =
                        Math.min(
                                1,
                                Math.min(
                                        format.getWidth() / sheet.width(),
                                        format.getHeight() / sheet.height()));
                g.scale(scale, scale);
                new Painter(fonts, Palette.PRINT).paint(g, sheet.signs());
            } finally {
                g.dispose();
            }
            return Printable.PAGE_EXISTS;
        };
    }
}
