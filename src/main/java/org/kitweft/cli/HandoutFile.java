package org.kitweft.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.lesson.Lesson;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.handout.Handout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.page.PdfFile;
import org.kitweft.score.page.Progress;

/** The printed pages of a lesson as a PDF document. */
final class HandoutFile {
    private HandoutFile() {}

    static void write(Lesson lesson, Path target, boolean replace) throws IOException {
        Fonts fonts = Fonts.load();
        Handout handout = new Handout(new Engraver(fonts), HandoutSettings.DEFAULT);
        PdfFile.write(
                handout.sheets(lesson, Progress.NONE),
                fonts,
                target,
                replace ? Existing.REPLACE : Existing.KEEP,
                Progress.NONE);
    }
}
