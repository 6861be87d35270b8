package org.kitweft.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;

/** The lesson that comes with the program: {@code demo/harbour-class.json}. */
final class DemoLesson {
    /** The name of its file. */
    static final String FILE = "harbour-class.json";

    private DemoLesson() {}

    static Lesson load() throws IOException {
        String resource = "/org/kitweft/demo/" + FILE;
        try (InputStream stream =
                Objects.requireNonNull(DemoLesson.class.getResourceAsStream(resource), resource)) {
            return LessonFile.parse(
                    new String(stream.readAllBytes(), StandardCharsets.UTF_8), FILE);
        }
    }
}
