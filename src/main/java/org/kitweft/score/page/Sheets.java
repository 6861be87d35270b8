package org.kitweft.score.page;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A document: sheets in order and what to call it.
 *
 * @param title for the reader's title bar; may be empty
 * @param sheets at least one
 * @param unwritable characters that no font of this computer has, and that stand as boxes
 */
public record Sheets(String title, List<Sheet> sheets, List<String> unwritable) {
    public Sheets {
        Objects.requireNonNull(title, "title");
        sheets = List.copyOf(sheets);
        unwritable = List.copyOf(unwritable);
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("a document has at least one sheet");
        }
    }

    /** One line for people about what could not be written, if anything. */
    public Optional<String> note() {
        return unwritable.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "no font on this computer has %s: boxes stand for them on the page; install a font that has them and write it again"
                                .formatted(String.join(" ", unwritable)));
    }
}
