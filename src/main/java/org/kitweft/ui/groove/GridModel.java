package org.kitweft.ui.groove;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.groove.Conflict;
import org.kitweft.groove.CountSyllables;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Place;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Stroke;

/**
 * A groove laid out as a grid: rows of surfaces in staff order, a column a step, marks where
 * something is struck. Immutable; knows nothing of pixels.
 */
public final class GridModel {
    private final Groove groove;
    private final List<GridRow> rows;
    private final List<String> syllables;
    private final List<GridMark> marks;
    private final Map<Integer, Integer> strokeAt = new HashMap<>();
    private final Map<Integer, List<Conflict>> conflictsAt = new HashMap<>();

    private GridModel(Groove groove) {
        this.groove = groove;
        this.rows = GridRow.of(groove.kit());
        this.syllables = CountSyllables.ofBar(groove.grid());
        for (Conflict conflict : groove.conflicts()) {
            for (Place place : conflict.places()) {
                conflictsAt.computeIfAbsent(column(place), k -> new ArrayList<>()).add(conflict);
            }
        }
        this.marks = groove.hits().stream().flatMap(hit -> mark(hit).stream()).toList();
        layStrokes();
    }

    /** Lays a groove out. */
    public static GridModel of(Groove groove) {
        return new GridModel(groove);
    }

    /** What is laid out. */
    public Groove groove() {
        return groove;
    }

    /** The rows from top to bottom, at least one. */
    public List<GridRow> rows() {
        return rows;
    }

    /** Columns in all. */
    public int columns() {
        return groove.bars() * columnsPerBar();
    }

    /** Columns of a bar. */
    public int columnsPerBar() {
        return groove.grid().stepsPerBar();
    }

    /** Columns of a beat. */
    public int columnsPerBeat() {
        return groove.grid().stepsPerBeat();
    }

    /** What is said at a column when counting aloud. */
    public String syllable(int column) {
        return syllables.get(column % columnsPerBar());
    }

    /** The bar and step of a column. */
    public Place place(int column) {
        return new Place(column / columnsPerBar() + 1, column % columnsPerBar() + 1);
    }

    /** The column of a bar and step, from 0. */
    public int column(Place place) {
        return (place.bar() - 1) * columnsPerBar() + place.step() - 1;
    }

    /** All marks in time. */
    public List<GridMark> marks() {
        return marks;
    }

    /** The marks of a cell, several where sounds share a row. */
    public List<GridMark> marksAt(int row, int column) {
        return marks.stream()
                .filter(mark -> mark.row() == row && (int) mark.column() == column)
                .toList();
    }

    /** Which stroke of the sticking lies at a column, from 0, rests included. */
    public OptionalInt strokeAt(int column) {
        Integer stroke = strokeAt.get(column);
        return stroke == null ? OptionalInt.empty() : OptionalInt.of(stroke);
    }

    /** The stroke of the sticking at a column. */
    public Optional<Stroke> stroke(int column) {
        OptionalInt index = strokeAt(column);
        return index.isPresent()
                ? Optional.of(groove.sticking().strokes().get(index.getAsInt()))
                : Optional.empty();
    }

    /** What cannot be played at a column. */
    public List<Conflict> conflictsAt(int column) {
        return conflictsAt.getOrDefault(column, List.of());
    }

    /** The row of a sound. */
    public OptionalInt rowOf(SoundName sound) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).sounds().contains(sound)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private Optional<GridMark> mark(Hit hit) {
        OptionalInt row = rowOf(hit.sound());
        if (row.isEmpty()) {
            return Optional.empty();
        }
        int column = column(hit.place());
        List<Conflict> conflicts =
                conflictsAt(column).stream()
                        .filter(
                                conflict ->
                                        conflict.sounds().contains(hit.sound())
                                                && conflict.limb()
                                                        .map(limb -> limb == hit.limb())
                                                        .orElse(true))
                        .toList();
        return Optional.of(
                new GridMark(
                        hit,
                        row.getAsInt(),
                        (double) hit.written() / groove.grid().stepTicks(),
                        layerOf(hit),
                        hit.source() == HitSource.STROKE
                                && hit.stroke().isPresent()
                                && groove.voicing().strokes().containsKey(hit.stroke().getAsInt()),
                        conflicts));
    }

    private OptionalInt layerOf(Hit hit) {
        if (hit.source() != HitSource.LAYER) {
            return OptionalInt.empty();
        }
        List<Layer> layers = groove.voicing().layers();
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            if (layer.limb() == hit.limb()
                    && layer.sound().equals(hit.sound())
                    && hit.written() % layerStepTicks(layer) == 0
                    && layer.figure()
                            .steps()
                            .get(
                                    (int)
                                            (hit.written()
                                                    / layerStepTicks(layer)
                                                    % layer.figure().steps().size()))
                            .isPresent()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** Ticks of a step of a layer. */
    long layerStepTicks(Layer layer) {
        return groove.grid().meter().beatTicks() / layer.stepsPerBeat();
    }

    /** As the weaver does: over the bar it runs on, else it starts again with its bars. */
    private void layStrokes() {
        int size = groove.sticking().size();
        int perBar = columnsPerBar();
        int period =
                groove.grid().overTheBar()
                        ? Integer.MAX_VALUE
                        : (size + perBar - 1) / perBar * perBar;
        for (int column = 0; column < columns(); column++) {
            strokeAt.put(column, column % period % size);
        }
    }
}
