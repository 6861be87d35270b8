package org.kitweft.lesson;

import org.jspecify.annotations.Nullable;

/** A lesson file with a fault: one line that names the file, the place and what is wrong there. */
public final class LessonFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    LessonFormatException(String source, String place, String fault) {
        this(source, place, fault, null);
    }

    LessonFormatException(String source, String place, String fault, @Nullable Throwable cause) {
        super(
                "lesson file %s: %s%s"
                        .formatted(source, place.isEmpty() ? "" : place + ": ", fault),
                cause);
    }
}
