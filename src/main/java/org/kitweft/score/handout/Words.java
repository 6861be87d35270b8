package org.kitweft.score.handout;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

/** Breaks text into lines, where its script allows it: Japanese has no spaces to break at. */
final class Words {
    private Words() {}

    /** The lines of a text in a width; a word that is too long for a line is cut. */
    static List<String> lines(
            TextFont font, TextStyle style, double size, String text, double width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.strip().lines().toList()) {
            String words = paragraph.strip().replaceAll("\\s+", " ");
            BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
            breaks.setText(words);
            int from = 0;
            int fits = 0;
            for (int end = breaks.next(); end != BreakIterator.DONE; end = breaks.next()) {
                if (!fits(font, style, size, words.substring(from, end), width)) {
                    if (fits > from) {
                        lines.add(words.substring(from, fits).strip());
                        from = fits;
                    }
                    while (!fits(font, style, size, words.substring(from, end), width)) {
                        int cut = cut(font, style, size, words, from, end, width);
                        lines.add(words.substring(from, cut));
                        from = cut;
                    }
                }
                fits = end;
            }
            lines.add(words.substring(from).strip());
        }
        return text.isBlank() ? List.of() : lines;
    }

    private static boolean fits(
            TextFont font, TextStyle style, double size, String text, double width) {
        return text.codePointCount(0, text.length()) <= 1
                || font.width(style, size, text.stripTrailing()) <= width;
    }

    /** Where a piece ends that fits, at least one character after its beginning. */
    private static int cut(
            TextFont font,
            TextStyle style,
            double size,
            String words,
            int from,
            int end,
            double width) {
        int cut = words.offsetByCodePoints(from, 1);
        while (cut < end) {
            int next = words.offsetByCodePoints(cut, 1);
            if (!fits(font, style, size, words.substring(from, next), width)) {
                break;
            }
            cut = next;
        }
        return cut;
    }
}
