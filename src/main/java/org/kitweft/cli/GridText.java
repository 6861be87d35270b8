package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.kitweft.cli.GridTable.Column;
import org.kitweft.cli.GridTable.Row;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;

/**
 * The grid of a groove as text: a block for each bar, one row for the count, one for the sticking,
 * and one for each sound, high ones first. Bars that are wider than {@value #WIDTH} characters go
 * on beat by beat below.
 *
 * <pre>
 * Bar 1      | 1  e  &amp;  a   2  e  &amp;  a |
 * Sticking   |&gt;R (L) R  R  &gt;L  R (L)(L)|
 * Hi-hat     |&gt;R  ·  R  R   ·  R  ·  · |
 * Snare      | · (L) ·  ·  &gt;L  · (L)(L)|
 * </pre>
 */
final class GridText {
    /** Characters of a line, if a beat leaves room. */
    static final int WIDTH = 80;

    private record Line(String label, List<GridCell> cells) {}

    private final GridTable table;
    private final Symbols symbols;
    private final List<List<Line>> bars = new ArrayList<>();

    private GridText(GridTable table, Symbols symbols) {
        this.table = table;
        this.symbols = symbols;
        for (int bar = 1; bar <= table.groove().bars(); bar++) {
            bars.add(lines(bar));
        }
    }

    /** The text, its lines ended by {@code \n}. */
    static String of(Groove groove, Symbols symbols) {
        return new GridText(GridTable.of(groove), symbols).text();
    }

    private List<Line> lines(int bar) {
        List<Line> lines = new ArrayList<>();
        lines.add(
                new Line(
                        "Bar " + bar,
                        table.columns().stream()
                                .map(column -> GridCell.plain(ascii(column.label())))
                                .toList()));
        lines.add(
                new Line(
                        "Sticking",
                        table.columns().stream().map(column -> sticking(bar, column)).toList()));
        for (Row row : table.rows()) {
            lines.add(
                    new Line(
                            row.label(),
                            table.columns().stream()
                                    .map(column -> cell(row, bar, column))
                                    .toList()));
        }
        return lines;
    }

    /** Syllables have one sign beyond ASCII: the dot where nothing is said. */
    private String ascii(String label) {
        return label.replace(Symbols.UNICODE.dot(), symbols.dot());
    }

    private GridCell sticking(int bar, Column column) {
        if (!column.isStep()) {
            return GridCell.plain("");
        }
        Groove groove = table.groove();
        int index = groove.strokeAt(new Place(bar, column.step()));
        return GridCell.stroke(groove.sticking().strokes().get(index).text());
    }

    private GridCell cell(Row row, int bar, Column column) {
        List<Hit> hits = table.hits(row, bar, column);
        return hits.isEmpty()
                ? GridCell.plain(column.isStep() ? symbols.dot() : "")
                : GridCell.hits(hits, table.groove().kit());
    }

    /**
     * How the columns lie.
     *
     * @param labels characters of the longest label
     * @param anchor where in a column the anchors stand
     * @param column characters of a column
     * @param beats beats of a line
     */
    private record Widths(int labels, int anchor, int column, int beats) {}

    private Widths widths() {
        List<Line> all = bars.stream().flatMap(List::stream).toList();
        int labels = all.stream().mapToInt(line -> line.label().length()).max().orElseThrow();
        int anchor = cells(all).mapToInt(GridCell::anchor).max().orElseThrow();
        int after = cells(all).mapToInt(cell -> cell.after(anchor)).max().orElseThrow();
        int beats = table.groove().grid().meter().beats();
        int room = WIDTH - labels - 3;
        boolean packed = anchor > 0 && lineOf(beats, anchor + after + 1) > room;
        int column = anchor + after + (packed ? 0 : 1);
        int fit = Math.max(1, Math.min(beats, (room + 1) / (lineOf(1, column) + 1)));
        int linesABar = (beats + fit - 1) / fit;
        return new Widths(labels, anchor, column, (beats + linesABar - 1) / linesABar);
    }

    /** Characters of so many beats: their columns, and a space between beats. */
    private int lineOf(int beats, int column) {
        int perBeat = table.columns().size() / table.groove().grid().meter().beats();
        return beats * (perBeat * column + 1) - 1;
    }

    private String text() {
        Widths widths = widths();
        int beats = table.groove().grid().meter().beats();
        StringBuilder text = new StringBuilder();
        for (List<Line> bar : bars) {
            for (int from = 0; from < beats; from += widths.beats()) {
                int to = Math.min(beats, from + widths.beats());
                for (Line line : bar) {
                    append(text, line, from, to, widths);
                }
                text.append("\n");
            }
        }
        return text.toString();
    }

    private void append(StringBuilder text, Line line, int from, int to, Widths widths) {
        int perBeat = line.cells().size() / table.groove().grid().meter().beats();
        text.append(line.label()).append(" ".repeat(widths.labels() - line.label().length()));
        for (int beat = from; beat < to; beat++) {
            text.append(beat == from ? " |" : " ");
            for (GridCell cell : line.cells().subList(beat * perBeat, (beat + 1) * perBeat)) {
                cell.append(text, widths.anchor(), widths.column());
            }
        }
        text.append("|\n");
    }

    private static Stream<GridCell> cells(List<Line> lines) {
        return lines.stream().flatMap(line -> line.cells().stream());
    }
}
