package org.kitweft.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Strokes of equal length in playing order, and nothing else: no surface, no tempo, no meter.
 *
 * <p>Immutable. A rest is a stroke too. Never empty; at most {@value #MAX_STROKES} strokes. {@code
 * RL} and {@code LR} differ, although one is a rotation of the other.
 */
public record Sticking(List<Stroke> strokes) {
    /** The most strokes a sticking has, repeats written out. */
    public static final int MAX_STROKES = 512;

    public Sticking {
        strokes = List.copyOf(strokes);
        if (strokes.isEmpty() || strokes.size() > MAX_STROKES) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "a sticking has 1 to %d strokes, this one %d",
                            MAX_STROKES,
                            strokes.size()));
        }
    }

    /**
     * Reads a sticking text, e.g. {@code >RLRR LRLL}, {@code [lR (L)]*4}, {@code rlrr}.
     *
     * @throws TextFormatException naming the position and what was expected there
     */
    public static Sticking parse(String text) {
        return new StickingParser(text).parse();
    }

    /** The number of strokes, rests included: the sticking's length in steps. */
    public int size() {
        return strokes.size();
    }

    /** The number of strokes that are struck. */
    public int struckCount() {
        return (int) strokes.stream().filter(s -> s.struck().isPresent()).count();
    }

    /** The strokes that are struck, in order. */
    public List<Stroke.Struck> struck() {
        return strokes.stream().flatMap(s -> s.struck().stream()).toList();
    }

    /** The letters that occur, in the order of {@link Letter}. */
    public Set<Letter> letters() {
        Set<Letter> letters = EnumSet.noneOf(Letter.class);
        struck().forEach(s -> letters.add(s.letter()));
        return Collections.unmodifiableSet(letters);
    }

    /** The sticking that starts {@code steps} strokes later and comes round; may be negative. */
    public Sticking rotated(int steps) {
        List<Stroke> turned = new ArrayList<>(strokes);
        Collections.rotate(turned, -Math.floorMod(steps, strokes.size()));
        return new Sticking(turned);
    }

    /** The sticking with right and left hand exchanged. */
    public Sticking handsSwapped() {
        return new Sticking(strokes.stream().map(Stroke::handsSwapped).toList());
    }

    /** The sticking read from its end. */
    public Sticking reversed() {
        List<Stroke> backwards = new ArrayList<>(strokes);
        Collections.reverse(backwards);
        return new Sticking(backwards);
    }

    /** The sticking with one stroke exchanged for another; {@code index} counts from 0. */
    public Sticking with(int index, Stroke stroke) {
        List<Stroke> edited = new ArrayList<>(strokes);
        edited.set(index, stroke);
        return new Sticking(edited);
    }

    /**
     * The sticking as text that reads back to the same value: in groups of four, or of three where
     * only that comes out even.
     */
    public String text() {
        int size = strokes.size();
        return text(size % 4 != 0 && size % 3 == 0 ? 3 : size <= 5 ? size : 4);
    }

    /** The sticking as text in groups of so many strokes, at least one. */
    public String text(int group) {
        if (group < 1) {
            throw new IllegalArgumentException("a group has at least 1 stroke, not " + group);
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < strokes.size(); i += group) {
            List<Stroke> part = strokes.subList(i, Math.min(i + group, strokes.size()));
            boolean bare = part.stream().allMatch(s -> s.text().length() == 1);
            text.append(i == 0 ? "" : " ")
                    .append(
                            part.stream()
                                    .map(Stroke::text)
                                    .collect(Collectors.joining(bare ? "" : " ")));
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}
