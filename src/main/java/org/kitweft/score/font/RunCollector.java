package org.kitweft.score.font;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Joins neighbouring characters of one font to runs. */
final class RunCollector {
    private final List<TextRun> done = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private final StringBuilder unwritable = new StringBuilder();
    private Optional<SystemFont> font = Optional.empty();

    /** The font of the last character; empty: the text font, or none. */
    Optional<SystemFont> font() {
        return font;
    }

    void add(String shown, Optional<SystemFont> by, String missing) {
        if (!by.equals(font)) {
            close();
            font = by;
        }
        text.append(shown);
        unwritable.append(missing);
    }

    List<TextRun> done() {
        close();
        return done;
    }

    /** Spaces at the end of a run in another font belong to what follows it. */
    private void close() {
        String whole = text.toString();
        String run = font.isPresent() ? whole.stripTrailing() : whole;
        if (!run.isEmpty()) {
            done.add(new TextRun(run, font, unwritable.toString()));
        }
        if (run.length() < whole.length()) {
            done.add(new TextRun(whole.substring(run.length()), Optional.empty(), ""));
        }
        text.setLength(0);
        unwritable.setLength(0);
    }
}
