package org.kitweft.ui.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;
import org.kitweft.lesson.LessonFormatException;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.session.Session;

/**
 * The groove in the grid from one day to the next, whether or not it is in a lesson: a lesson of
 * one item, in a file beside the settings.
 */
final class LastGroove {
    private static final String NAME = "last-groove.json";

    private LastGroove() {}

    private static Path file(Path settingsFile) {
        return settingsFile.resolveSibling(NAME);
    }

    /**
     * The session that was closed last, without its lesson; empty on the first start.
     *
     * @throws IOException if there is a file that cannot be read, or holds something else
     */
    static Optional<Session> read(Path settingsFile) throws IOException {
        Path file = file(settingsFile);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return LessonFile.read(file).items().stream()
                    .findFirst()
                    .map(item -> Session.of(item.recipe(), item.tempo()).with(item.role()));
        } catch (LessonFormatException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    /** Keeps what is in the grid. */
    static void write(Path settingsFile, Session session) throws IOException {
        LessonItem item =
                new LessonItem(
                        "", session.role(), session.recipe(), session.tempo(), List.of(), "");
        LessonFile.write(new Lesson("", "", List.of(item)), file(settingsFile), true);
    }
}
