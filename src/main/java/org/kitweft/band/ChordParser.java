package org.kitweft.band;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kitweft.pattern.TextFormatException;

/**
 * Reads one chord symbol from left to right, once.
 *
 * <p>Which tones a quality has: W3C MusicXML 4.0, type {@code kind-value} (from memory); {@code
 * alt}, and that {@code add} leaves the seventh out: common practice, no source.
 */
final class ChordParser {
    private static final String ROOT = "a chord root A to G";
    private static final String A_QUALITY =
            "a quality such as m, maj7, 7, 9, dim, sus4, b9, add9, or '/' and a bass";
    private static final List<String> MAJOR_SEVENTH =
            List.of("major", "Major", "maj", "Maj", "MAJ", "ma", "Ma", "M");

    private final String what;
    private final String text;
    private final int end;
    private int at;

    /**
     * Degrees by number; extensions that are altered twice (b9 and #9) stand in {@link #second}.
     */
    private final TreeMap<Integer, Integer> degrees = new TreeMap<>();

    private final TreeSet<ChordDegree> second = new TreeSet<>();
    private boolean majorSeventh;

    ChordParser(String what, String text, int from, int to) {
        this.what = what;
        this.text = text;
        this.at = from;
        this.end = to;
    }

    Chord parse() {
        PitchName root = pitch(ROOT);
        int suffix = at;
        degrees.put(1, 0);
        degrees.put(3, 0);
        degrees.put(5, 0);
        quality();
        while (at < end && text.charAt(at) != '/') {
            addition();
        }
        String written = text.substring(suffix, at);
        Optional<PitchName> bass = Optional.empty();
        if (eat("/")) {
            bass = Optional.of(pitch("a bass A to G after the slash"));
            if (at < end) {
                throw fault("the end of the chord after its bass");
            }
        }
        TreeSet<ChordDegree> all = new TreeSet<>(second);
        degrees.forEach((number, alteration) -> all.add(new ChordDegree(number, alteration)));
        return new Chord(root, written, all, bass);
    }

    private PitchName pitch(String expected) {
        if (at >= end || "ABCDEFG".indexOf(text.charAt(at)) < 0) {
            throw fault(expected);
        }
        char letter = text.charAt(at++);
        int alteration = eat("#") || eat("♯") ? 1 : eat("b") || eat("♭") ? -1 : 0;
        return new PitchName(letter, alteration);
    }

    private void quality() {
        if (eatMajor()) {
            majorSeventh = true;
            number(false);
        } else if (eat("Δ") || eat("△")) {
            majorSeventh = true;
            degrees.put(7, 0);
            number(false);
        } else if (eat("dim") || eat("°") || eat("o")) {
            degrees.put(3, -1);
            degrees.put(5, -1);
            if (eat("7")) {
                degrees.put(7, -2);
            }
        } else if (eat("ø") || eat("Ø")) {
            degrees.put(3, -1);
            degrees.put(5, -1);
            degrees.put(7, -1);
            number(false);
        } else if (eat("aug") || eat("+")) {
            degrees.put(5, 1);
            number(false);
        } else if (eat("min") || eat("mi") || eat("m") || eat("-")) {
            degrees.put(3, -1);
            majorSeventh = eatMajor() || eat("Δ");
            if (majorSeventh && !digitNext()) {
                degrees.put(7, 0);
            }
            number(false);
        } else {
            number(true);
        }
    }

    private boolean eatMajor() {
        return !text.startsWith("madd", at) && MAJOR_SEVENTH.stream().anyMatch(this::eat);
    }

    private void number(boolean plain) {
        if (eat("69") || eat("6/9")) {
            degrees.put(6, 0);
            degrees.put(9, 0);
        } else if (eat("6")) {
            degrees.put(6, 0);
        } else if (eat("13")) {
            stack(13);
        } else if (eat("11")) {
            stack(11);
        } else if (eat("9")) {
            stack(9);
        } else if (eat("7")) {
            stack(7);
        } else if (plain && eat("5")) {
            degrees.remove(3);
        } else if (digitNext()) {
            throw fault("5, 6, 69, 7, 9, 11 or 13");
        }
    }

    /** Thirds from the seventh up to a number. */
    private void stack(int highest) {
        degrees.put(7, majorSeventh ? 0 : -1);
        for (int number = 9; number <= highest; number += 2) {
            degrees.put(number, 0);
        }
    }

    private void addition() {
        if (eat("(")) {
            int opening = at - 1;
            do {
                oneAddition();
            } while (eat(",") || (at < end && text.charAt(at) != ')'));
            if (!eat(")")) {
                throw new TextFormatException(what, text, opening, "a ')' for this '('");
            }
        } else {
            oneAddition();
        }
    }

    private void oneAddition() {
        if (eat("sus2")) {
            suspend(2);
        } else if (eat("sus4") || eat("sus")) {
            suspend(4);
        } else if (eat("add")) {
            int alteration = sign();
            int number = oneOf("2, 4, 6, 9, 11 or 13", 13, 11, 9, 6, 4, 2);
            degrees.put(number, alteration);
        } else if (eat("alt")) {
            degrees.remove(5);
            degrees.put(7, -1);
            degrees.put(9, -1);
            second.add(new ChordDegree(9, 1));
            degrees.put(13, -1);
        } else if (eat("no") || eat("omit")) {
            degrees.remove(oneOf("3 or 5", 3, 5));
        } else if (text.startsWith("maj7", at) || text.startsWith("Maj7", at)) {
            at += 4;
            degrees.put(7, 0);
        } else {
            int alteration = sign();
            if (alteration == 0) {
                throw fault(A_QUALITY);
            }
            alter(oneOf("5, 6, 9, 11 or 13", 13, 11, 9, 6, 5), alteration);
        }
        if (degrees.size() + second.size() < 2) {
            throw new TextFormatException(what, text, at - 1, "a chord of two tones at least");
        }
    }

    private void suspend(int number) {
        degrees.remove(3);
        degrees.put(number, 0);
    }

    /** Altered a second time, a ninth keeps both: 7(b9,#9). */
    private void alter(int number, int alteration) {
        int before = degrees.getOrDefault(number, 0);
        if (before != 0 && before != alteration) {
            second.add(new ChordDegree(number, alteration));
        } else {
            degrees.put(number, alteration);
        }
    }

    private int sign() {
        return eat("#") || eat("♯") || eat("+") ? 1 : eat("b") || eat("♭") || eat("-") ? -1 : 0;
    }

    private int oneOf(String expected, int... numbers) {
        for (int number : numbers) {
            if (eat(Integer.toString(number))) {
                return number;
            }
        }
        throw fault(expected);
    }

    private boolean digitNext() {
        return at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    private boolean eat(String piece) {
        boolean found = at + piece.length() <= end && text.startsWith(piece, at);
        at += found ? piece.length() : 0;
        return found;
    }

    private TextFormatException fault(String expected) {
        return new TextFormatException(what, text, at, expected);
    }
}
