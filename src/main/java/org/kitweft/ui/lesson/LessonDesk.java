package org.kitweft.ui.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

/** Which file the open lesson lies in, and whether it has changed since. For one thread. */
public final class LessonDesk {
    private final SessionModel session;
    private Optional<Path> file = Optional.empty();
    private Lesson saved;

    /** A desk with a lesson that is in no file yet. */
    public LessonDesk(SessionModel session) {
        this.session = session;
        this.saved = session.session().lesson();
    }

    /** The file of the open lesson, if it has one. */
    public Optional<Path> file() {
        return file;
    }

    /** Whether something would be lost if the lesson were closed. */
    public boolean unsaved() {
        Session now = session.session();
        return !now.lesson().equals(saved) || LessonEdits.hasChanges(now);
    }

    /** Begins an empty lesson; the groove stays, the phrase was the former lesson's. */
    public void begin() {
        file = Optional.empty();
        saved = new Lesson("", "", List.of());
        session.edit("New lesson", session.session().with(saved));
    }

    /**
     * Opens a lesson and the groove of its first item, or its first phrase where it has no item.
     *
     * @throws IOException if the file cannot be read
     * @throws IllegalArgumentException if it is no lesson; the message names the fault
     */
    public void open(Path path) throws IOException {
        opened(path, LessonFile.read(path));
    }

    /** The lesson that was read from a file. */
    public void opened(Path path, Lesson lesson) {
        file = Optional.of(path);
        saved = lesson;
        Session next = session.session().with(lesson);
        if (!lesson.items().isEmpty()) {
            next = next.opened(0);
        } else if (!lesson.phrases().isEmpty()) {
            next = LessonEdits.openPhrase(next, 0);
        }
        session.edit("Open lesson", next);
    }

    /**
     * Writes the lesson, what is being edited of it included.
     *
     * @param replace whether an existing file may be replaced; the former one is kept beside it
     * @throws IOException if it cannot be written
     */
    public void save(Path path, boolean replace) throws IOException {
        Session kept = LessonEdits.keepChanges(session.session());
        LessonFile.write(kept.lesson(), path, replace);
        session.edit("Keep changes", kept);
        file = Optional.of(path);
        saved = kept.lesson();
    }
}
