package org.kitweft.ui.window;

import java.awt.Component;
import java.awt.Window;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Path;
import javax.swing.SwingUtilities;
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
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/**
 * The lesson as a handout: how it looks, to a PDF file, or to a printer. Laid out off the event
 * thread.
 */
final class HandoutCommands {
    /** Stands over the handout of a lesson that has no title. */
    static final String UNTITLED = "Lesson";

    private final Component owner;
    private final SessionModel session;
    private final HandoutPage page;
    private final FileDialogs files;
    private final Tasks tasks;
    private final Notices notices;

    HandoutCommands(
            Component owner,
            SessionModel session,
            HandoutPage page,
            FileDialogs files,
            Tasks tasks,
            Notices notices) {
        this.owner = owner;
        this.session = session;
        this.page = page;
        this.files = files;
        this.tasks = tasks;
        this.notices = notices;
    }

    /** Asks how handouts shall look. */
    void page() {
        String title = session.session().lesson().title();
        HandoutForm form = new HandoutForm(title, page.settings());
        Window window =
                owner instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(owner);
        HandoutDialog.of(window, form, this::use).setVisible(true);
    }

    /** Uses what a form says: the title goes into the lesson, the rest stays with this teacher. */
    void use(HandoutForm form) {
        Session now = session.session();
        if (!form.lessonTitle().equals(now.lesson().title())) {
            session.edit(
                    "Lesson title",
                    now.with(now.lesson().withTitle(form.lessonTitle()), now.item()));
        }
        try {
            page.use(form.settings());
            notices.note("Handouts look as you chose");
        } catch (IOException e) {
            notices.fault("handouts look as you chose until the window closes: " + e.getMessage());
        }
    }

    /** Takes up how handouts looked the last time. */
    void begin() {
        try {
            page.read();
        } catch (IOException e) {
            notices.fault("how handouts look was not read: " + e.getMessage());
        }
    }

    /** The lesson with a heading: a page that somebody else finds says what it is. */
    private Lesson lesson() {
        Lesson lesson = session.session().lesson();
        return lesson.title().isBlank() ? lesson.withTitle(UNTITLED) : lesson;
    }

    void pdf() {
        Lesson lesson = lesson();
        if (hasItems(lesson)) {
            files.toSave("Save handout", "PDF document", lesson.title(), "pdf")
                    .ifPresent(this::pdf);
        }
    }

    /** Writes without asking; a file that exists is replaced. */
    void pdf(Path path) {
        Lesson lesson = lesson();
        HandoutSettings settings = page.settings();
        tasks.run(
                StatusBar.WRITING + path.getFileName(),
                progress -> {
                    Fonts fonts = Fonts.load();
                    Sheets sheets = sheets(lesson, settings, fonts, progress);
                    PdfFile.write(
                            sheets,
                            fonts,
                            path,
                            SafeFile.Existing.REPLACE,
                            (done, of) -> !progress.stopped());
                    return sheets;
                },
                sheets -> notices.note(told("Written: " + path.toAbsolutePath(), sheets)),
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    /** Asks for the printer and prints. */
    void print() {
        Lesson lesson = lesson();
        if (!hasItems(lesson)) {
            return;
        }
        PrinterJob job = SheetPrinter.job();
        if (job.getPrintService() == null) {
            notices.fault(
                    "No printer is set up on this computer; save the handout as PDF instead.");
            return;
        }
        if (!job.printDialog()) {
            return;
        }
        HandoutSettings settings = page.settings();
        tasks.run(
                "Printing the handout",
                progress -> {
                    Fonts fonts = Fonts.load();
                    Sheets sheets = sheets(lesson, settings, fonts, progress);
                    SheetPrinter.print(sheets, fonts, job);
                    return sheets;
                },
                sheets -> notices.note(told("Sent to the printer: " + sheets.title(), sheets)),
                failure -> notices.fault("Not printed: " + failure.getMessage()));
    }

    private boolean hasItems(Lesson lesson) {
        boolean any = !lesson.items().isEmpty() || !lesson.phrases().isEmpty();
        if (!any) {
            notices.fault(
                    "The lesson has no items yet: add the groove to it first, then make the"
                            + " handout.");
        }
        return any;
    }

    private static String told(String done, Sheets sheets) {
        return done + sheets.note().map(note -> "; " + note).orElse("");
    }

    private static Sheets sheets(
            Lesson lesson, HandoutSettings settings, Fonts fonts, Tasks.Progress watcher) {
        Progress progress =
                (done, of) -> {
                    watcher.at((double) done / of);
                    return !watcher.stopped();
                };
        return new Handout(new Engraver(fonts), settings).sheets(lesson, progress);
    }
}
