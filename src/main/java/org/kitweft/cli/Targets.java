package org.kitweft.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Files that one command writes: all targets are looked at, and what may not fit its page is laid
 * out, before the first is written. So a file in the way or a bar too dense is told before anything
 * is made.
 */
final class Targets {

    /** Writes one file whole, or not at all. */
    @FunctionalInterface
    interface Writer {
        void write(Path target, boolean replace) throws IOException;
    }

    /** Makes ready what is to be written, and refuses what can not. */
    @FunctionalInterface
    interface Layout {
        Writer layOut();
    }

    private final Map<Path, Layout> layouts = new LinkedHashMap<>();
    private final Map<Path, String> asked = new HashMap<>();
    private final boolean replace;

    Targets(boolean replace) {
        this.replace = replace;
    }

    /** Adds a file; {@code option} is what asked for it. */
    void add(String option, Path target, Writer writer) {
        addLaidOut(option, target, () -> writer);
    }

    /** Adds a file that is laid out before any is written. */
    void addLaidOut(String option, Path target, Layout layout) {
        if (target.toString().isBlank()) {
            throw new InputException("%s \"\": expected a file name".formatted(option));
        }
        Path whole = target.toAbsolutePath().normalize();
        String other = asked.put(whole, option);
        if (other != null) {
            throw new InputException("%s and %s both write to %s".formatted(other, option, target));
        }
        layouts.put(target, layout);
    }

    /** Refuses if any of them exists and may not, or can never, be replaced. */
    void check() {
        for (Path target : layouts.keySet()) {
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

    /** Writes all of them, and says so; none if one cannot be laid out. */
    void write(Terminal terminal) throws IOException {
        check();
        Map<Path, Writer> writers = new LinkedHashMap<>();
        layouts.forEach((target, layout) -> writers.put(target, layout.layOut()));
        for (Map.Entry<Path, Writer> entry : writers.entrySet()) {
            entry.getValue().write(entry.getKey(), replace);
            terminal.err().println("written: " + entry.getKey());
        }
    }
}
