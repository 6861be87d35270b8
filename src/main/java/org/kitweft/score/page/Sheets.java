package org.kitweft.score.page;

import java.util.List;
import java.util.Objects;

/**
 * A document: sheets in order and what to call it.
 *
 * @param title for the reader's title bar; may be empty
 * @param sheets at least one
 */
public record Sheets(String title, List<Sheet> sheets) {
    public Sheets {
        Objects.requireNonNull(title, "title");
        sheets = List.copyOf(sheets);
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("a document has at least one sheet");
        }
    }
}
