package org.kitweft.band;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.kitweft.pattern.TextFormatException;

/**
 * Chords in bars. The chords of a bar last equally long; empty is N.C., where the band is silent.
 *
 * @param bars 1 to {@value #MOST_BARS} bars of 1 to {@value #MOST_CHORDS} chords each
 */
public record ChordChart(List<List<Optional<Chord>>> bars) {
    /** The most bars of a chart. */
    public static final int MOST_BARS = 512;

    /** The most chords of a bar. */
    public static final int MOST_CHORDS = 16;

    private static final String WHAT = "chart";
    private static final String NO_CHORD = "N.C.";
    private static final String A_CHORD = "a chord, N.C. or %";

    public ChordChart {
        bars = bars.stream().<List<Optional<Chord>>>map(List::copyOf).toList();
        if (bars.isEmpty() || bars.size() > MOST_BARS) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "a chart has 1 to %d bars, this one %d",
                            MOST_BARS,
                            bars.size()));
        }
        for (List<Optional<Chord>> bar : bars) {
            if (bar.isEmpty() || bar.size() > MOST_CHORDS) {
                throw new IllegalArgumentException(
                        String.format(
                                Locale.ROOT,
                                "a bar has 1 to %d chords, this one %d",
                                MOST_CHORDS,
                                bar.size()));
            }
        }
    }

    /**
     * Reads a chart such as {@code Dm7 G7 | Cmaj7 %}: bars between {@code |}, chords between
     * spaces; {@code %} alone in a bar repeats the bar before, beside chords (or written {@code /})
     * it goes on with the chord before; {@code N.C.} is no chord.
     *
     * @throws TextFormatException naming the position and what was expected there
     */
    public static ChordChart parse(String text) {
        return parse(text, MOST_BARS);
    }

    /**
     * Reads a chart for a phrase of so many bars.
     *
     * @throws TextFormatException also where the chart's first bar too many begins
     */
    public static ChordChart parse(String text, int mostBars) {
        List<List<Optional<Chord>>> bars = new ArrayList<>();
        int at = 0;
        while (at <= text.length()) {
            int line = text.indexOf('|', at);
            int end = line < 0 ? text.length() : line;
            boolean blank = text.substring(at, end).isBlank();
            boolean doubleLine = at == end && at > 0 && at < text.length();
            boolean edge = at == 0 ? line >= 0 : line < 0;
            if (blank && !edge && !doubleLine) {
                throw new TextFormatException(WHAT, text, end, A_CHORD);
            }
            if (!blank) {
                if (bars.size() == mostBars) {
                    throw new TextFormatException(
                            WHAT,
                            text,
                            firstInk(text, at),
                            "at most %d %s, as many as the phrase has"
                                    .formatted(mostBars, mostBars == 1 ? "bar" : "bars"));
                }
                bars.add(bar(text, at, end, bars));
            }
            at = end + 1;
        }
        if (bars.isEmpty()) {
            throw new TextFormatException(WHAT, text, text.length(), A_CHORD);
        }
        return new ChordChart(bars);
    }

    private static List<Optional<Chord>> bar(
            String text, int from, int to, List<List<Optional<Chord>>> before) {
        List<Optional<Chord>> bar = new ArrayList<>();
        int at = firstInk(text, from);
        if (text.substring(at, to).strip().equals("%")) {
            if (before.isEmpty()) {
                throw new TextFormatException(WHAT, text, at, "a bar before it to repeat");
            }
            return before.get(before.size() - 1);
        }
        while (at < to) {
            int end = at;
            while (end < to && !Character.isWhitespace(text.charAt(end))) {
                end++;
            }
            if (bar.size() == MOST_CHORDS) {
                throw new TextFormatException(
                        WHAT, text, at, "at most %d chords in a bar".formatted(MOST_CHORDS));
            }
            bar.add(chord(text, at, end, bar, before));
            at = end;
            while (at < to && Character.isWhitespace(text.charAt(at))) {
                at++;
            }
        }
        return bar;
    }

    private static Optional<Chord> chord(
            String text,
            int at,
            int end,
            List<Optional<Chord>> bar,
            List<List<Optional<Chord>>> before) {
        String word = text.substring(at, end);
        if (word.equals("%") || word.equals("/")) {
            if (!bar.isEmpty()) {
                return bar.get(bar.size() - 1);
            }
            if (before.isEmpty()) {
                throw new TextFormatException(WHAT, text, at, "a chord before it to go on with");
            }
            List<Optional<Chord>> last = before.get(before.size() - 1);
            return last.get(last.size() - 1);
        }
        if (word.equalsIgnoreCase(NO_CHORD) || word.equals("NC")) {
            return Optional.empty();
        }
        return Optional.of(new ChordParser(WHAT, text, at, end).parse());
    }

    private static int firstInk(String text, int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** The chart as text that reads back to it. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < bars.size(); i++) {
            List<Optional<Chord>> bar = bars.get(i);
            text.append(i == 0 ? "" : " | ");
            if (i > 0 && bar.equals(bars.get(i - 1))) {
                text.append('%');
                continue;
            }
            for (int j = 0; j < bar.size(); j++) {
                boolean goesOn = j > 0 && bar.get(j).equals(bar.get(j - 1));
                text.append(j == 0 ? "" : " ")
                        .append(goesOn ? "/" : bar.get(j).map(Chord::text).orElse(NO_CHORD));
            }
        }
        return text.toString();
    }

    /** Its first bars: all of them where it has no more than so many. */
    public ChordChart first(int most) {
        return new ChordChart(bars.subList(0, Math.min(most, bars.size())));
    }

    /** The same chart higher or lower by semitones. */
    public ChordChart transposed(int semitones) {
        return mapped(chord -> chord.transposed(semitones));
    }

    private ChordChart mapped(UnaryOperator<Chord> change) {
        List<List<Optional<Chord>>> changed = new ArrayList<>();
        for (List<Optional<Chord>> bar : bars) {
            changed.add(bar.stream().map(chord -> chord.map(change)).toList());
        }
        return new ChordChart(changed);
    }

    @Override
    public String toString() {
        return text();
    }
}
