package org.kitweft.groove;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.TextFormatException;

/**
 * What a layer repeats: for each step a stroke of some dynamic, or nothing.
 *
 * @param steps 1 to {@value #MAX_STEPS} steps, at least one of them a stroke
 */
public record Figure(List<Optional<Dynamic>> steps) {
    /** The most steps of a figure. */
    public static final int MAX_STEPS = 512;

    public Figure {
        steps = List.copyOf(steps);
        if (steps.size() > MAX_STEPS || steps.stream().allMatch(Optional::isEmpty)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "a figure has a stroke and at most %d steps, this one %d",
                            MAX_STEPS,
                            steps.size()));
        }
    }

    /**
     * Reads a figure: {@code x} a stroke, {@code >x} accented, {@code (x)} ghost, {@code -} a rest;
     * spaces and {@code |} only separate.
     *
     * @throws TextFormatException naming the position and what was expected there
     */
    public static Figure parse(String text) {
        List<Optional<Dynamic>> steps = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            char next = text.charAt(at);
            if (next == '|' || Character.isWhitespace(next)) {
                at++;
            } else if (next == '-') {
                steps.add(Optional.empty());
                at++;
            } else if (text.startsWith("x", at)) {
                steps.add(Optional.of(Dynamic.PLAIN));
                at++;
            } else if (text.startsWith(">x", at)) {
                steps.add(Optional.of(Dynamic.ACCENT));
                at += 2;
            } else if (text.startsWith("(x)", at)) {
                steps.add(Optional.of(Dynamic.GHOST));
                at += 3;
            } else {
                throw fault(text, at, "x, >x, (x) or a rest '-'");
            }
            if (steps.size() > MAX_STEPS) {
                throw fault(text, at - 1, "at most %d steps".formatted(MAX_STEPS));
            }
        }
        if (steps.stream().allMatch(Optional::isEmpty)) {
            throw fault(text, text.length(), "at least one stroke 'x'");
        }
        return new Figure(steps);
    }

    private static TextFormatException fault(String text, int at, String expected) {
        return new TextFormatException("layer", text, at, expected);
    }

    /** The text that reads back to this figure. */
    public String text() {
        return steps.stream()
                .map(step -> step.map(Figure::text).orElse("-"))
                .collect(Collectors.joining(" "));
    }

    private static String text(Dynamic dynamic) {
        return switch (dynamic) {
            case GHOST -> "(x)";
            case PLAIN -> "x";
            case ACCENT -> ">x";
        };
    }
}
