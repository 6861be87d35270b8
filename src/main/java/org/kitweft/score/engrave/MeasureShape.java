package org.kitweft.score.engrave;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.Beam;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.ChordMark;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.Head;
import org.kitweft.score.model.Label;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Rest;
import org.kitweft.score.model.Stems;
import org.kitweft.score.model.Voice;

/**
 * The columns of a measure: one for each instant at which something is written, with the room it
 * needs and the room it would like.
 */
final class MeasureShape {
    /** LilyPond 2.24 gives the shortest note two heads' widths and 1.2 spaces a doubling. */
    private static final double SHORTEST_SPACE = 2.5;

    private static final double SPACE_PER_DOUBLING = 1.25;

    private static final double SHIFT_GAP = 0.25;

    /** One instant. */
    static final class Column {
        private final long tick;
        private double left;
        private double right;
        private double labelLeft;
        private double labelRight;

        Column(long tick) {
            this.tick = tick;
        }

        long tick() {
            return tick;
        }

        double left() {
            return Math.min(left, labelLeft);
        }

        private void cover(double from, double to) {
            left = Math.min(left, from);
            right = Math.max(right, to);
        }

        private void label(double from, double to) {
            labelLeft = Math.min(labelLeft, from);
            labelRight = Math.max(labelRight, to);
        }

        /** The least distance to the next column. */
        double rodTo(Column next) {
            return Math.max(
                    right - next.left + Measures.COLUMN_GAP,
                    labelRight
                            - next.labelLeft
                            + (labelRight > 0 && next.labelRight > 0 ? Measures.LETTER_GAP : 0));
        }
    }

    private final Measure measure;
    private final List<Column> columns;
    private final IdentityHashMap<Chord, ChordShape> shapes = new IdentityHashMap<>();
    private final IdentityHashMap<Chord, GraceShape> graces = new IdentityHashMap<>();
    private final double[] ideal;
    private final List<Span> spans;

    MeasureShape(Fonts fonts, Measure measure, Clef clef, long shortest) {
        this.measure = measure;
        NavigableMap<Long, Column> byTick = new TreeMap<>();
        for (Voice voice : measure.voices()) {
            for (Event event : voice.events()) {
                Column column = byTick.computeIfAbsent(event.tick(), Column::new);
                if (event instanceof Chord chord) {
                    addChord(fonts.music(), clef, voice, chord, column);
                } else if (!((Rest) event).wholeBar()) {
                    double width = fonts.music().bounds(HeadGlyphs.rest(event.value())).getMaxX();
                    column.cover(0, width + event.dots() * 0.75);
                }
            }
        }
        for (ChordMark mark : measure.marks().chords()) {
            byTick.computeIfAbsent(mark.tick(), Column::new);
        }
        double middle = plainMiddle(fonts.music());
        addLabels(fonts.text(), byTick, middle);
        this.columns = List.copyOf(byTick.values());
        this.ideal = ideals(shortest);
        this.spans = spans(fonts.text());
    }

    static double plainMiddle(MusicFont font) {
        return font.bounds(Glyph.HEAD_BLACK).getMaxX() / 2;
    }

    private void addChord(MusicFont font, Clef clef, Voice voice, Chord chord, Column column) {
        boolean up = stemUp(voice, chord, clef);
        ChordShape shape = new ChordShape(font, chord, clef, up, 0);
        boolean graced = !chord.gracedHeads().isEmpty();
        if (graced) {
            graces.put(chord, shape.grace());
        }
        double shift = shift(voice, chord, clef);
        if (shift > 0) {
            shape = new ChordShape(font, chord, clef, up, shift - Math.min(0, shape.left()));
            if (graced) {
                graces.put(chord, shape.grace());
            }
        }
        shapes.put(chord, shape);
        column.cover(shape.left(), shape.right());
    }

    /** Later voices give way to the right where their heads would touch those of earlier ones. */
    private double shift(Voice voice, Chord chord, Clef clef) {
        double shift = 0;
        for (Voice earlier : measure.voices()) {
            if (earlier.number() == voice.number()) {
                break;
            }
            for (Event event : earlier.events()) {
                if (event.tick() == chord.tick()
                        && event instanceof Chord other
                        && inTheWay(earlier, other, voice, chord, clef)) {
                    shift = Math.max(shift, shape(other).right() + SHIFT_GAP);
                }
            }
        }
        return shift;
    }

    /** Whether an earlier chord is touched or crossed by a later one in the same column. */
    private static boolean inTheWay(Voice earlier, Chord one, Voice later, Chord other, Clef clef) {
        if (earlier.number() % 2 == later.number() % 2) {
            return true;
        }
        boolean oneIsUpper = earlier.number() % 2 == 1;
        Chord upper = oneIsUpper ? one : other;
        Chord lower = oneIsUpper ? other : one;
        double bottom = ChordShape.yOf(upper.heads().get(0).place(), clef);
        double top = ChordShape.yOf(lower.heads().get(lower.heads().size() - 1).place(), clef);
        return top < bottom + roomBetween(one, other);
    }

    /** How far apart the heads of two chords must be to stand over each other. */
    private static double roomBetween(Chord one, Chord other) {
        boolean accidental = anyHead(one, other, h -> h.accidental().isPresent());
        boolean graced = !one.gracedHeads().isEmpty() || !other.gracedHeads().isEmpty();
        boolean ghost = anyHead(one, other, Head::ghost);
        // Grace notes stand to the left, where only parentheses and displaced heads meet them.
        boolean crowded = graced && (ghost || one.heads().size() + other.heads().size() > 2);
        return accidental || crowded ? 2.9 : ghost ? 1.4 : 0.9;
    }

    private static boolean anyHead(Chord one, Chord other, Predicate<Head> which) {
        return Stream.concat(one.heads().stream(), other.heads().stream()).anyMatch(which);
    }

    private static boolean stemUp(Voice voice, Chord chord, Clef clef) {
        if (voice.stems() != Stems.BY_PLACE) {
            return voice.stems() == Stems.UP;
        }
        if (!chord.beams().isEmpty()) {
            return beamedUp(voice, chord, clef);
        }
        return farthest(List.of(chord), clef) > 0;
    }

    /** All chords of a beam go one way. */
    private static boolean beamedUp(Voice voice, Chord chord, Clef clef) {
        List<Chord> group = new ArrayList<>();
        for (Event event : voice.events()) {
            if (!(event instanceof Chord c) || c.beams().isEmpty()) {
                continue;
            }
            if (c.beams().get(0) == Beam.BEGIN) {
                group.clear();
            }
            group.add(c);
            if (c.beams().get(0) == Beam.END && group.contains(chord)) {
                break;
            }
        }
        return farthest(group, clef) > 0;
    }

    /** The y of the head farthest from the middle line; the upper one where two are as far. */
    private static double farthest(List<Chord> chords, Clef clef) {
        return chords.stream()
                .flatMap(c -> c.heads().stream())
                .mapToDouble(h -> ChordShape.yOf(h.place(), clef))
                .reduce(0, (a, b) -> Math.abs(b) > Math.abs(a) ? b : a);
    }

    /** The room that a chord symbol needs up to the next one or the bar line, over columns. */
    private record Span(int from, int to, double width) {}

    private List<Span> spans(TextFont text) {
        List<ChordMark> marks = measure.marks().chords();
        List<Span> found = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            int end = i + 1 < marks.size() ? column(marks.get(i + 1).tick()) : columns.size();
            found.add(
                    new Span(
                            column(marks.get(i).tick()),
                            end,
                            text.width(TextStyle.SEMIBOLD, Measures.CHORD_SIZE, marks.get(i).text())
                                    + Measures.CHORD_GAP));
        }
        return found;
    }

    private int column(long tick) {
        int index = 0;
        while (columns.get(index).tick < tick) {
            index++;
        }
        return index;
    }

    private void addLabels(TextFont text, NavigableMap<Long, Column> byTick, double middle) {
        for (Label label : measure.sticking()) {
            Column column = byTick.computeIfAbsent(label.tick(), Column::new);
            double half = text.width(TextStyle.SEMIBOLD, Measures.STICKING_SIZE, label.text()) / 2;
            double grace =
                    label.grace().isEmpty()
                            ? 0
                            : text.width(
                                            TextStyle.SEMIBOLD,
                                            Measures.GRACE_LETTER_SIZE,
                                            label.grace())
                                    + 0.2;
            column.label(middle - half - grace, middle + half);
        }
        for (List<Label> row : List.of(measure.counting(), measure.keyNames())) {
            for (Label label : row) {
                Column column = byTick.computeIfAbsent(label.tick(), Column::new);
                double half =
                        text.width(TextStyle.REGULAR, Measures.COUNT_SIZE, label.text()) / 2
                                + Measures.COUNT_MARGIN;
                column.label(middle - half, middle + half);
            }
        }
    }

    private double[] ideals(long shortest) {
        double[] gaps = new double[columns.size()];
        for (int i = 0; i < gaps.length; i++) {
            long from = columns.get(i).tick;
            long to = i + 1 < gaps.length ? columns.get(i + 1).tick : measure.meter().barTicks();
            long sounding = shortestAt(from, to);
            double share = (double) (to - from) / sounding;
            double doublings = Math.log((double) sounding / shortest) / Math.log(2);
            gaps[i] = share * Math.max(1.4, SHORTEST_SPACE + SPACE_PER_DOUBLING * doublings);
        }
        return gaps;
    }

    /** The shortest event that is going on between two ticks. */
    private long shortestAt(long from, long to) {
        return measure.voices().stream()
                .flatMap(v -> v.events().stream())
                .filter(e -> e.tick() <= from && e.end() >= to)
                .mapToLong(Event::ticks)
                .min()
                .orElse(to - from);
    }

    Measure measure() {
        return measure;
    }

    List<Column> columns() {
        return columns;
    }

    ChordShape shape(Chord chord) {
        return Objects.requireNonNull(shapes.get(chord));
    }

    Optional<GraceShape> grace(Chord chord) {
        return Optional.ofNullable(graces.get(chord));
    }

    /** From the bar's start line to the first column, without clef and meter. */
    double leadIn() {
        return Measures.AFTER_BAR_LINE - columns.get(0).left();
    }

    /**
     * Distances from column to column, the last one to the bar line, when notes stand so many times
     * as wide as they would like; never less than they need.
     */
    double[] gaps(double stretch) {
        double[] gaps = new double[columns.size()];
        for (int i = 0; i < gaps.length; i++) {
            Column column = columns.get(i);
            double rod =
                    i + 1 < gaps.length
                            ? column.rodTo(columns.get(i + 1))
                            : Math.max(column.right, column.labelRight) + Measures.BEFORE_BAR_LINE;
            gaps[i] = Math.max(rod, ideal[i] * stretch);
        }
        for (Span span : spans) {
            double lacking = span.width();
            for (int i = span.from(); i < span.to(); i++) {
                lacking -= gaps[i];
            }
            for (int i = span.from(); lacking > 0 && i < span.to(); i++) {
                gaps[i] += lacking / (span.to() - span.from());
            }
        }
        return gaps;
    }
}
