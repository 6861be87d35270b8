package org.kitweft.pattern;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Reads the sticking text of design section 4 from left to right, once.
 *
 * <pre>
 * text   = { item | space | "|" }
 * item   = "-" | ["&gt;"] body | "(" body { body } ")" | "[" text "]" "*" number
 * body   = grace letter ["z"]        grace: none, one (flam) or two (drag) small letters of the other hand
 * </pre>
 *
 * A text with no upper-case letter has no grace notes: each small letter is a plain stroke.
 */
final class StickingParser {
    private static final String WHAT = "sticking";
    private static final String A_STROKE = "R, L, K, H, B, a rest '-' or a repeat '['";

    /** A repeat that is still open: where its bracket stands and where its strokes begin. */
    private record OpenRepeat(int index, int firstStroke) {}

    private final String text;
    private final boolean smallLettersArePlain;
    private final List<Stroke> strokes = new ArrayList<>();
    private final Deque<OpenRepeat> open = new ArrayDeque<>();
    private int at;

    StickingParser(String text) {
        this.text = text;
        this.smallLettersArePlain = text.chars().noneMatch(Character::isUpperCase);
    }

    Sticking parse() {
        while (at < text.length()) {
            char next = text.charAt(at);
            if (isSpace(next)) {
                at++;
            } else if (next == '[') {
                open.push(new OpenRepeat(at++, strokes.size()));
            } else if (next == ']') {
                closeRepeat();
            } else if (next == '(') {
                ghosts();
            } else {
                add(at, plainOrAccented(next));
            }
        }
        if (!open.isEmpty()) {
            throw new TextFormatException(
                    WHAT, text, open.peek().index(), "a ']' and a number of times for this repeat");
        }
        if (strokes.isEmpty()) {
            throw fault(A_STROKE);
        }
        return new Sticking(strokes);
    }

    private Stroke plainOrAccented(char next) {
        if (next == '-') {
            at++;
            return Stroke.REST;
        }
        if (next == '>') {
            at++;
            return body("a letter after the accent").withDynamic(Dynamic.ACCENT);
        }
        return body(A_STROKE);
    }

    private void ghosts() {
        int opening = at++;
        int before = strokes.size();
        while (at < text.length() && text.charAt(at) != ')') {
            if (isSpace(text.charAt(at))) {
                at++;
            } else {
                int start = at;
                add(start, body("a letter of a ghost stroke, or ')'").withDynamic(Dynamic.GHOST));
            }
        }
        if (at == text.length()) {
            throw new TextFormatException(WHAT, text, opening, "a ')' for this ghost stroke");
        }
        if (strokes.size() == before) {
            throw fault("a letter between the parentheses");
        }
        at++;
    }

    private void closeRepeat() {
        if (open.isEmpty()) {
            throw fault("a '[' before this ']'");
        }
        OpenRepeat repeat = open.pop();
        if (strokes.size() == repeat.firstStroke()) {
            throw fault("a stroke in the repeat");
        }
        at++;
        if (at == text.length() || text.charAt(at) != '*') {
            throw fault("'*' and a number of times, as in [RLRR]*2");
        }
        at++;
        int digits = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        String number = text.substring(digits, at);
        int times = number.isEmpty() || number.length() > 3 ? 0 : Integer.parseInt(number);
        if (times < 1 || times > Sticking.MAX_STROKES) {
            throw new TextFormatException(
                    WHAT, text, digits, "a number of times from 1 to " + Sticking.MAX_STROKES);
        }
        List<Stroke> once = List.copyOf(strokes.subList(repeat.firstStroke(), strokes.size()));
        for (int i = 1; i < times; i++) {
            once.forEach(stroke -> add(repeat.index(), stroke));
        }
    }

    /** Grace notes, the letter, a buzz. */
    private Stroke.Struck body(String expected) {
        int start = at;
        int graceNotes = 0;
        if (!smallLettersArePlain) {
            while (at < text.length() && Character.isLowerCase(text.charAt(at))) {
                at++;
                graceNotes++;
            }
        }
        Letter letter =
                (at < text.length() ? Letter.of(text.charAt(at)) : Optional.<Letter>empty())
                        .orElseThrow(() -> fault(expected));
        if (graceNotes > 0) {
            checkGraceNotes(start, graceNotes, letter);
        }
        at++;
        boolean buzz = at < text.length() && text.charAt(at) == 'z';
        if (buzz && graceNotes > 0) {
            throw fault("a flam, a drag or a buzz, but one only");
        }
        at += buzz ? 1 : 0;
        Ornament ornament =
                buzz
                        ? Ornament.BUZZ
                        : switch (graceNotes) {
                            case 1 -> Ornament.FLAM;
                            case 2 -> Ornament.DRAG;
                            default -> Ornament.NONE;
                        };
        return new Stroke.Struck(letter, Dynamic.PLAIN, ornament);
    }

    private void checkGraceNotes(int start, int count, Letter letter) {
        if (!letter.isOneHand()) {
            throw new TextFormatException(
                    WHAT, text, start, "grace notes before R or L only, not before " + letter);
        }
        char wanted = letter == Letter.R ? 'l' : 'r';
        for (int i = start; i < start + count; i++) {
            if (text.charAt(i) != wanted) {
                throw new TextFormatException(
                        WHAT,
                        text,
                        i,
                        "'%c', the other hand's grace note, before %s".formatted(wanted, letter));
            }
        }
        if (count > 2) {
            throw new TextFormatException(
                    WHAT, text, start + 2, "one grace note (flam) or two (drag) before " + letter);
        }
    }

    private void add(int start, Stroke stroke) {
        if (strokes.size() == Sticking.MAX_STROKES) {
            throw new TextFormatException(
                    WHAT, text, start, "at most %d strokes in all".formatted(Sticking.MAX_STROKES));
        }
        strokes.add(stroke);
    }

    private TextFormatException fault(String expected) {
        return new TextFormatException(WHAT, text, at, expected);
    }

    private static boolean isSpace(char character) {
        return character == '|' || Character.isWhitespace(character);
    }
}
