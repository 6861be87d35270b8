package org.kitweft.ui.window;

import java.awt.print.PrinterJob;
import java.nio.file.Path;
import org.kitweft.file.SafeFile;
import org.kitweft.lesson.Lesson;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.handout.Handout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.page.PdfFile;
import org.kitweft.score.page.Progress;
import org.kitweft.score.page.SheetPrinter;
import org.kitweft.score.page.Sheets;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/** The lesson as a handout: to a PDF file, or to a printer. Laid out off the event thread. */
final class HandoutCommands {
    private final SessionModel session;
    private final FileDialogs files;
    private final Tasks tasks;
    private final Notices notices;

    HandoutCommands(SessionModel session, FileDialogs files, Tasks tasks, Notices notices) {
        this.session = session;
        this.files = files;
        this.tasks = tasks;
        this.notices = notices;
    }

    void pdf() {
        Lesson lesson = session.session().lesson();
        if (hasItems(lesson)) {
            files.toSave("Save handout", "PDF document", lesson.title(), "pdf")
                    .ifPresent(this::pdf);
        }
    }

    /** Writes without asking; a file that exists is replaced. */
    void pdf(Path path) {
        Lesson lesson = session.session().lesson();
        tasks.run(
                "Writing " + path.getFileName(),
                progress -> {
                    Fonts fonts = Fonts.load();
                    Sheets sheets = sheets(lesson, fonts, progress);
                    PdfFile.write(
                            sheets,
                            fonts,
                            path,
                            SafeFile.Existing.REPLACE,
                            (done, of) -> !progress.stopped());
                    return path;
                },
                written -> notices.note("Written: " + written.toAbsolutePath()),
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    /** Asks for the printer and prints. */
    void print() {
        Lesson lesson = session.session().lesson();
        PrinterJob job = SheetPrinter.job();
        if (!hasItems(lesson)) {
            return;
        }
        if (job.getPrintService() == null) {
            notices.fault(
                    "No printer is set up on this computer; save the handout as PDF instead.");
            return;
        }
        if (!job.printDialog()) {
            return;
        }
        tasks.run(
                "Printing the handout",
                progress -> {
                    Fonts fonts = Fonts.load();
                    SheetPrinter.print(sheets(lesson, fonts, progress), fonts, job);
                    return lesson;
                },
                printed -> notices.note("Sent to the printer: " + printed.title()),
                failure -> notices.fault("Not printed: " + failure.getMessage()));
    }

    private boolean hasItems(Lesson lesson) {
        boolean any = !lesson.items().isEmpty() || !lesson.phrases().isEmpty();
        if (!any) {
            notices.fault(
                    "The lesson has no items yet: add the groove to it first, then make the handout.");
        }
        return any;
    }

    private static Sheets sheets(Lesson lesson, Fonts fonts, Tasks.Progress watcher) {
        Progress progress =
                (done, of) -> {
                    watcher.at((double) done / of);
                    return !watcher.stopped();
                };
        return new Handout(new Engraver(fonts), HandoutSettings.DEFAULT).sheets(lesson, progress);
    }
}
