package org.kitweft.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Files that one command writes: all targets are looked at before the first is written, so that a
 * file in the way is told before anything is made.
 */
final class Targets {

    /** Writes one file whole, or not at all. */
    @FunctionalInterface
    interface Writer {
        void write(Path target, boolean replace) throws IOException;
    }

    private final Map<Path, Writer> writers = new LinkedHashMap<>();
    private final Map<Path, String> asked = new HashMap<>();
    private final boolean replace;

    Targets(boolean replace) {
        this.replace = replace;
    }

    /** Adds a file; {@code option} is what asked for it. */
    void add(String option, Path target, Writer writer) {
        if (target.toString().isBlank()) {
            throw new InputException("%s \"\": expected a file name".formatted(option));
        }
        Path whole = target.toAbsolutePath().normalize();
        String other = asked.put(whole, option);
        if (other != null) {
            throw new InputException("%s and %s both write to %s".formatted(other, option, target));
        }
        writers.put(target, writer);
    }

    /** Refuses if any of them exists and may not, or can never, be replaced. */
    void check() {
        for (Path target : writers.keySet()) {
            if (Files.isDirectory(target)) {
                throw new InputException("%s is a folder, expected a file".formatted(target));
            }
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                throw new InputException(
                        "%s is no regular file, it cannot be replaced".formatted(target));
            }
            if (!replace && Files.exists(target)) {
                throw new InputException(
                        "%s exists already and was not replaced; --force replaces it"
                                .formatted(target));
            }
        }
    }

    /** Writes all of them, and says so. */
    void write(Terminal terminal) throws IOException {
        check();
        for (Map.Entry<Path, Writer> entry : writers.entrySet()) {
            entry.getValue().write(entry.getKey(), replace);
            terminal.err().println("written: " + entry.getKey());
        }
    }
}
