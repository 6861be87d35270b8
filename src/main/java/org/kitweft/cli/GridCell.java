package org.kitweft.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * The text of one cell, lined up with others at its anchor.
 *
 * @param text what it shows
 * @param anchor the character, from 0, that stands above and below those of other cells
 */
record GridCell(String text, int anchor) {

    static GridCell plain(String text) {
        return new GridCell(text, 0);
    }

    /** A stroke as the sticking writes it, lined up at its letter. */
    static GridCell stroke(String text) {
        int anchor = 0;
        while (anchor < text.length() - 1 && !Character.isUpperCase(text.charAt(anchor))) {
            anchor++;
        }
        return new GridCell(text, anchor);
    }

    /** The limbs that strike together, as loud as the loudest, with the ornaments of the first. */
    static GridCell hits(List<Hit> hits, Kit kit) {
        String letters =
                hits.stream()
                        .map(hit -> LimbLetters.of(hit.limb(), kit).name())
                        .collect(Collectors.joining());
        Hit first = hits.get(0);
        Dynamic dynamic =
                hits.stream().map(Hit::dynamic).max(Comparator.naturalOrder()).orElseThrow();
        String grace =
                LimbLetters.of(first.limb().opposite(), kit)
                        .name()
                        .toLowerCase(Locale.ROOT)
                        .repeat(first.ornament().graceNotes());
        String body = grace + letters + (first.ornament() == Ornament.BUZZ ? "z" : "");
        return switch (dynamic) {
            case GHOST -> new GridCell("(" + body + ")", 1 + grace.length());
            case PLAIN -> new GridCell(body, grace.length());
            case ACCENT -> new GridCell(">" + body, 1 + grace.length());
        };
    }

    /** Characters needed from the anchor on; long syllables may begin before it. */
    int after(int anchorAt) {
        int length = text.codePointCount(0, text.length());
        return anchor == 0 && length > 2 ? length - anchorAt : length - anchor;
    }

    /** Appends the cell, so wide, with its anchor so far from the left. */
    void append(StringBuilder line, int anchorAt, int width) {
        int length = text.codePointCount(0, text.length());
        int before = Math.min(anchorAt - anchor, width - length);
        line.append(" ".repeat(before)).append(text).append(" ".repeat(width - length - before));
    }
}
