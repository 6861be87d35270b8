package org.kitweft.ui.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.kitweft.file.SafeFile;
import org.kitweft.groove.Phrase;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Palette;
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
import org.kitweft.score.page.SvgFile;

/**
 * What plays, as notation in a file: the ending of its name says of which kind. Immutable.
 *
 * @param phrase what is written
 * @param title over it
 * @param with its tempo and chords
 */
record StaffExport(Phrase phrase, String title, PlayedWith with) {
    /** The kinds there are; the first where a name says none. */
    static final List<String> ENDINGS = List.of("pdf", "svg", "png", "musicxml", "mxl");

    /**
     * Writes it; a file that exists is replaced.
     *
     * @throws IOException in one sentence, if it cannot be written
     */
    void write(Path path, Progress progress) throws IOException {
        String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
        Score score = Notation.of(phrase, NotationOptions.DEFAULT, with);
        SafeFile.Existing replace = SafeFile.Existing.REPLACE;
        if (name.endsWith(".musicxml") || name.endsWith(".mxl")) {
            MusicXmlFile.write(score, new MusicXmlSettings(title), path, replace);
            return;
        }
        Fonts fonts = Fonts.load();
        ScorePage page = new ScorePage(new Engraver(fonts), Paper.A4);
        if (name.endsWith(".svg")) {
            SvgFile.write(
                    page.cutOut(score, Paper.A4.width()), fonts, Palette.PRINT, path, replace);
        } else if (name.endsWith(".png")) {
            PngFile.write(
                    page.cutOut(score, Paper.A4.width()),
                    fonts,
                    Palette.PRINT,
                    PngFile.USUAL_DPI,
                    path,
                    replace);
        } else {
            PdfFile.write(page.pages(score, title), fonts, path, replace, progress);
        }
    }
}
