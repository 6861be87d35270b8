package org.kitweft.ui.window;

import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** What went wrong with a file, in one line without class names. */
final class Faults {
    private Faults() {}

    /**
     * One line for people.
     *
     * @param what was tried, e.g. {@code cannot open}
     */
    static String line(String what, Path path, Exception fault) {
        String reason;
        if (fault instanceof NoSuchFileException) {
            reason = "there is no such file";
        } else if (fault instanceof AccessDeniedException) {
            reason = "you may not read or write there";
        } else {
            reason = fault.getMessage() == null ? "an unknown fault" : fault.getMessage();
        }
        String first = reason.lines().findFirst().orElse(reason);
        return first.contains(String.valueOf(path.getFileName()))
                ? first
                : "%s %s: %s".formatted(what, path.getFileName(), first);
    }
}
