package org.kitweft.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Palette;
import org.kitweft.score.engrave.TooDenseException;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.score.model.Score;
import org.kitweft.score.musicxml.MusicXmlFile;
import org.kitweft.score.musicxml.MusicXmlSettings;
import org.kitweft.score.page.Paper;
import org.kitweft.score.page.PdfFile;
import org.kitweft.score.page.PngFile;
import org.kitweft.score.page.Progress;
import org.kitweft.score.page.ScorePage;
import org.kitweft.score.page.Sheet;
import org.kitweft.score.page.Sheets;
import org.kitweft.score.page.SvgFile;

/** A groove or a phrase on the staff, written to files. */
final class StaffFiles {
    private static final int POINTS_PER_INCH = 72;

    private final Phrase phrase;
    private final String title;
    private final PlayedWith with;
    private final PageOptions options;

    StaffFiles(Groove groove, PlayedWith with, PageOptions options) {
        this(Phrase.of(groove), groove.sticking().text(), with, options);
    }

    StaffFiles(Phrase phrase, String title, PlayedWith with, PageOptions options) {
        this.phrase = phrase;
        this.title = title;
        this.with = with;
        this.options = options;
    }

    /**
     * The pages as a PDF document.
     *
     * @throws TooDenseException if a bar does not fit the page
     */
    Targets.Writer pdf() {
        Fonts fonts = Fonts.load();
        Sheets pages =
                new ScorePage(new Engraver(fonts), options.paper())
                        .pages(score(options.printed()), title, options.legend());
        return (target, replace) ->
                PdfFile.write(pages, fonts, target, existing(replace), Progress.NONE);
    }

    /**
     * The staff alone as Scalable Vector Graphics.
     *
     * @throws TooDenseException if a bar does not fit the width of A4
     */
    Targets.Writer svg() {
        Fonts fonts = Fonts.load();
        Sheet sheet = cutOut(fonts, Paper.A4.width());
        return (target, replace) ->
                SvgFile.write(sheet, fonts, Palette.PRINT, target, existing(replace));
    }

    /**
     * The staff alone as a picture.
     *
     * @throws TooDenseException if a bar does not fit the width of A4
     */
    Targets.Writer png() {
        Fonts fonts = Fonts.load();
        Sheet sheet = cutOut(fonts, Paper.A4.width());
        return (target, replace) ->
                PngFile.write(
                        sheet, fonts, Palette.PRINT, PngFile.USUAL_DPI, target, existing(replace));
    }

    void writeMusicXml(Path target, boolean replace) throws IOException {
        MusicXmlFile.write(
                score(options.staff()), new MusicXmlSettings(title), target, existing(replace));
    }

    /**
     * The staff as a picture, lines no longer than {@code width}; empty if a bar is too dense for
     * it.
     *
     * @param width in pixels
     * @param scale pixels a point
     */
    Optional<BufferedImage> image(int width, int scale) {
        Fonts fonts = Fonts.load();
        try {
            Sheet sheet = cutOut(fonts, (double) width / scale);
            return Optional.of(PngFile.image(sheet, fonts, Palette.PRINT, scale * POINTS_PER_INCH));
        } catch (TooDenseException e) {
            return Optional.empty();
        }
    }

    private Sheet cutOut(Fonts fonts, double width) {
        return new ScorePage(new Engraver(fonts), Paper.A4).cutOut(score(options.staff()), width);
    }

    private Score score(NotationOptions options) {
        return Notation.of(phrase, options, with);
    }

    private static Existing existing(boolean replace) {
        return replace ? Existing.REPLACE : Existing.KEEP;
    }
}
