package org.kitweft.score.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

/** Breaks text into lines. */
final class Words {
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Words() {}

    /** The lines of a text in a width; a word that is too long for a line is cut. */
    static List<String> lines(
            TextFont font, TextStyle style, double size, String text, double width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.strip().lines().toList()) {
            StringBuilder line = new StringBuilder();
            for (String word : SPACES.splitAsStream(paragraph.strip()).toList()) {
                String rest = word;
                String joined = line.isEmpty() ? rest : line + " " + rest;
                if (font.width(style, size, joined) <= width) {
                    line.setLength(0);
                    line.append(joined);
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                while (rest.length() > 1 && font.width(style, size, rest) > width) {
                    int fits = rest.length() - 1;
                    while (fits > 1 && font.width(style, size, rest.substring(0, fits)) > width) {
                        fits--;
                    }
                    lines.add(rest.substring(0, fits));
                    rest = rest.substring(fits);
                }
                line.append(rest);
            }
            lines.add(line.toString());
        }
        return text.isBlank() ? List.of() : lines;
    }
}
