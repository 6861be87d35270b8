package org.kitweft.score.engrave;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.ChordMark;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Score;

/**
 * Places what stands over the staff of a line, from below: its bar number, a row of chord symbols,
 * headings, the tempo and how pairs swing. Used once.
 */
final class WordsOver {
    private static final double OVER_SIGNS = 0.7;
    private static final double OVER_CHORDS = 1.1;
    private static final double BESIDE_TEMPO = 1.6;

    /** From the middle of the first head back to about its left edge. */
    private static final double TO_HEAD = 0.6;

    private final SignList signs;
    private final Score score;
    private final int from;
    private final double width;
    private final List<Double> starts;
    private final List<NavigableMap<Long, Double>> xOfTicks;

    /**
     * @param from index of the first measure of the line
     * @param width of the line
     * @param starts where its measures start
     * @param xOfTicks for each the x of its instants
     */
    WordsOver(
            SignList signs,
            Score score,
            int from,
            double width,
            List<Double> starts,
            List<NavigableMap<Long, Double>> xOfTicks) {
        this.signs = signs;
        this.score = score;
        this.from = from;
        this.width = width;
        this.starts = starts;
        this.xOfTicks = xOfTicks;
    }

    void place(boolean barNumber) {
        if (barNumber && measure(from).number() > 1) {
            barNumber();
        }
        chords();
        for (int m = from; m < from + starts.size(); m++) {
            heading(m);
        }
        for (int m = from; m < from + starts.size(); m++) {
            tempoAndSwing(m);
        }
    }

    private Measure measure(int m) {
        return score.measures().get(m);
    }

    /** Where words to a whole measure begin: over the clef, or over its first note. */
    private double left(int m) {
        return m == from ? starts.get(0) : xOfTicks.get(m - from).firstEntry().getValue() - TO_HEAD;
    }

    private double textWidth(TextStyle style, double size, String text) {
        return signs.fonts().text().width(style, size, text);
    }

    private void barNumber() {
        String number = Integer.toString(measure(from).number());
        double size = Measures.BAR_NUMBER_SIZE;
        double x = starts.get(0);
        double end = x + textWidth(TextStyle.ITALIC, size, number);
        signs.text(
                Kind.BAR_NUMBER,
                number,
                TextStyle.ITALIC,
                size,
                x,
                signs.top(x, end, -2) - OVER_SIGNS,
                Owner.of(from, 0, 0));
    }

    /** A symbol and where it stands. */
    private record Symbol(String text, double x, double end, Owner owner) {}

    /** Chord symbols on one base line: where a chord begins, and once more at the line's start. */
    private void chords() {
        List<Symbol> symbols = new ArrayList<>();
        Optional<String> before = Optional.empty();
        double free = 0;
        for (int m = from; m < from + starts.size(); m++) {
            for (ChordMark mark : measure(m).marks().chords()) {
                String text = mark.text();
                if (!before.equals(Optional.of(text))) {
                    double x = Math.max(free, x(m, mark.tick()));
                    double end = x + textWidth(TextStyle.SEMIBOLD, Measures.CHORD_SIZE, text);
                    symbols.add(new Symbol(text, x, end, Owner.of(m, 0, mark.tick())));
                    free = end + Measures.CHORD_GAP;
                }
                before = Optional.of(text);
            }
        }
        double base =
                symbols.stream()
                                .mapToDouble(s -> signs.top(s.x() - 0.3, s.end() + 0.3, -2))
                                .min()
                                .orElse(-2)
                        - OVER_SIGNS
                        - TextFont.DESCENT * Measures.CHORD_SIZE;
        for (Symbol symbol : symbols) {
            signs.text(
                    Kind.CHORD_SYMBOL,
                    symbol.text(),
                    TextStyle.SEMIBOLD,
                    Measures.CHORD_SIZE,
                    symbol.x(),
                    base,
                    symbol.owner());
        }
    }

    /** The left edge of a head at an instant that has a column, as every chord's has. */
    private double x(int m, long tick) {
        NavigableMap<Long, Double> xs = xOfTicks.get(m - from);
        return xs.floorEntry(tick).getValue() - TO_HEAD;
    }

    private void heading(int m) {
        if (measure(m).heading().isEmpty()) {
            return;
        }
        String words = measure(m).heading().get();
        double size = Measures.HEADING_SIZE;
        double at = left(m);
        double end = at + textWidth(TextStyle.SEMIBOLD, size, words);
        signs.text(
                Kind.HEADING,
                words,
                TextStyle.SEMIBOLD,
                size,
                at,
                over(at, end, size),
                Owner.of(m, 0, 0));
    }

    /** The base line of words over everything between two x. */
    private double over(double at, double end, double size) {
        double gap = chordsOver(at, end) ? OVER_CHORDS : OVER_SIGNS;
        return signs.top(at - 0.3, end + 0.3, -2) - gap - TextFont.DESCENT * size / 2;
    }

    private boolean chordsOver(double at, double end) {
        return signs.signs().stream()
                .filter(sign -> sign.kind() == Kind.CHORD_SYMBOL)
                .map(PlacedSign::bounds)
                .anyMatch(box -> box.getMaxX() > at - 0.3 && box.getMinX() < end + 0.3);
    }

    private void tempoAndSwing(int m) {
        double size = Measures.TEMPO_SIZE;
        Optional<TempoSign> tempo =
                score.tempo()
                        .filter(t -> m == 0)
                        .map(t -> new TempoSign(t, measure(m).meter(), size));
        Optional<SwingSign> swing =
                measure(m).marks().swing().map(mark -> new SwingSign(mark, size));
        if (tempo.isEmpty() && swing.isEmpty()) {
            return;
        }
        double tempoWidth = tempo.map(sign -> sign.width(signs.fonts())).orElse(0.0);
        double between = tempo.isPresent() && swing.isPresent() ? BESIDE_TEMPO : 0;
        double swingWidth = swing.map(sign -> sign.width(signs.fonts())).orElse(0.0);
        double all = tempoWidth + between + swingWidth;
        double at = Math.max(0, Math.min(left(m), width - all));
        double base = over(at, at + all, size);
        Owner owner = Owner.of(m, 0, 0);
        tempo.ifPresent(sign -> sign.place(signs, Kind.TEMPO, at, base, owner));
        swing.ifPresent(
                sign -> sign.place(signs, Kind.TEMPO, at + tempoWidth + between, base, owner));
    }
}
