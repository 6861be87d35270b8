package org.kitweft.band;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.TextFormatException;

/**
 * What a line of a style repeats, step by step.
 *
 * <p>Its text has one word a step: {@code -} a rest, {@code ~} held on, or a voice; {@code >}
 * before it is an accent, parentheses are a ghost note, {@code .} after it is short, {@code '}
 * takes the chord of the next beat. Bars {@code |} only separate.
 *
 * @param steps at least one
 * @param reason why players play it, in plain language
 * @param weight how often it comes against the others of its line, from 1
 */
record BandFigure(List<FigureStep> steps, String reason, int weight) {
    BandFigure {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || weight < 1 || reason.isBlank()) {
            throw new IllegalArgumentException(
                    "a figure has a step, a reason and a weight of 1 or more");
        }
    }

    /**
     * Reads a figure.
     *
     * @param voices the voices it may name
     * @throws TextFormatException naming the position and what was expected there
     */
    static BandFigure parse(String text, List<String> voices, String reason, int weight) {
        List<FigureStep> steps = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            if (text.charAt(at) == '|' || Character.isWhitespace(text.charAt(at))) {
                at++;
                continue;
            }
            int end = at;
            while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
                end++;
            }
            steps.add(step(text, at, end, voices));
            at = end;
        }
        if (steps.isEmpty()) {
            throw new TextFormatException("figure", text, text.length(), expected(voices));
        }
        return new BandFigure(steps, reason, weight);
    }

    /** One word of a figure. */
    static FigureStep step(String text, int from, int to, List<String> voices) {
        String word = text.substring(from, to);
        if (word.equals("-")) {
            return FigureStep.REST;
        }
        if (word.equals("~")) {
            return FigureStep.HOLD;
        }
        boolean early = word.endsWith("'");
        word = early ? word.substring(0, word.length() - 1) : word;
        boolean clipped = word.endsWith(".");
        word = clipped ? word.substring(0, word.length() - 1) : word;
        boolean ghost = word.startsWith("(") && word.endsWith(")");
        boolean accent = word.startsWith(">");
        String voice =
                ghost ? word.substring(1, word.length() - 1) : accent ? word.substring(1) : word;
        if (!voices.contains(voice)) {
            throw new TextFormatException("figure", text, from, expected(voices));
        }
        Dynamic dynamic = ghost ? Dynamic.GHOST : accent ? Dynamic.ACCENT : Dynamic.PLAIN;
        return new FigureStep(FigureStep.Kind.NOTE, voice, dynamic, early, clipped);
    }

    private static String expected(List<String> voices) {
        return "a rest '-', held on '~' or one of " + String.join(" ", voices);
    }
}
