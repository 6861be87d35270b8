package org.kitweft.ui.window;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JOptionPane;
import org.kitweft.lesson.LessonFile;
import org.kitweft.ui.lesson.LessonDesk;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/** New, open, save, save as; and the question before unsaved changes are lost. */
final class LessonCommands {
    private static final String KIND = "Kitweft lesson";
    private static final String EXTENSION = "kitweft";

    private final Component owner;
    private final SessionModel session;
    private final LessonDesk desk;
    private final FileDialogs files;
    private final Tasks tasks;
    private final Notices notices;

    LessonCommands(
            Component owner,
            SessionModel session,
            LessonDesk desk,
            FileDialogs files,
            Tasks tasks,
            Notices notices) {
        this.owner = owner;
        this.session = session;
        this.desk = desk;
        this.files = files;
        this.tasks = tasks;
        this.notices = notices;
    }

    void begin() {
        if (mayLeave()) {
            desk.begin();
            notices.note("A new lesson");
        }
    }

    void open() {
        if (mayLeave()) {
            files.toOpen("Open lesson", KIND, EXTENSION, "json").ifPresent(this::open);
        }
    }

    /** Opens a file without asking. */
    void open(Path path) {
        tasks.run(
                "",
                progress -> LessonFile.read(path),
                lesson -> {
                    desk.opened(path, lesson);
                    notices.note("Opened " + path.getFileName());
                },
                failure -> notices.fault(Faults.line("cannot open", path, failure)));
    }

    /** Saves; true if it is saved now. */
    boolean save() {
        return desk.file().isPresent() ? save(desk.file().get()) : saveAs();
    }

    boolean saveAs() {
        Optional<Path> path =
                files.toSave("Save lesson", KIND, session.session().lesson().title(), EXTENSION);
        return path.isPresent() && save(path.get());
    }

    /** A lesson is small: it is written at once, so that closing can wait for it. */
    private boolean save(Path path) {
        try {
            desk.save(path, true);
            notices.note("Saved " + path.getFileName());
            return true;
        } catch (IOException e) {
            notices.fault(Faults.line("cannot save", path, e));
            return false;
        }
    }

    /** Whether the open lesson may be left: it is saved, or the user does not want it. */
    boolean mayLeave() {
        if (!desk.unsaved()) {
            return true;
        }
        Object[] answers = {"Save", "Don't save", "Cancel"};
        String name =
                desk.file().map(f -> String.valueOf(f.getFileName())).orElse("The new lesson");
        int answer =
                JOptionPane.showOptionDialog(
                        owner,
                        name + " has changes that are not saved.",
                        "Save the lesson?",
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.QUESTION_MESSAGE,
                        null,
                        answers,
                        answers[0]);
        return answer == 1 || (answer == 0 && save());
    }
}
