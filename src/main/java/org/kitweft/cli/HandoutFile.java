package org.kitweft.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.lesson.Lesson;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.handout.Handout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.page.PdfFile;
import org.kitweft.score.page.Progress;
import org.kitweft.score.page.Sheets;

/** The printed pages of a lesson as a PDF document. */
final class HandoutFile {
    private HandoutFile() {}

    /** Writes it; {@code notes} hears what could not be written, if anything. */
    static void write(
            Lesson lesson,
            HandoutSettings settings,
            Path target,
            boolean replace,
            Consumer<String> notes)
            throws IOException {
        Fonts fonts = Fonts.load();
        Sheets sheets = new Handout(new Engraver(fonts), settings).sheets(lesson, Progress.NONE);
        PdfFile.write(
                sheets, fonts, target, replace ? Existing.REPLACE : Existing.KEEP, Progress.NONE);
        sheets.note().ifPresent(notes);
    }
}
