package org.kitweft.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.kitweft.groove.CountSyllables;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Layer;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.StaffPlace;
import org.kitweft.kit.Surface;

/**
 * A groove as a table, for the text and the picture of it: a row for each sound that is struck, in
 * staff order from high to low; a column for each step of a bar and, where a layer has steps of its
 * own between them, for those.
 */
final class GridTable {

    /**
     * One sound.
     *
     * @param sound its name
     * @param label for people: the surface, and which sound if it is not the first
     */
    record Row(SoundName sound, String label) {}

    /**
     * One place in every bar.
     *
     * @param inBar ticks from the bar line
     * @param label what is counted there, empty between the steps
     * @param step the step of the grid, from 1, that it is or comes after
     * @param isStep whether it is a step of the grid
     * @param isBeat whether a beat begins there
     */
    record Column(long inBar, String label, int step, boolean isStep, boolean isBeat) {}

    private record CellKey(SoundName sound, long written) {}

    private final Groove groove;
    private final List<Row> rows;
    private final List<Column> columns;
    private final Map<CellKey, List<Hit>> cells = new HashMap<>();

    private GridTable(Groove groove) {
        this.groove = groove;
        this.rows = rows(groove);
        this.columns = columns(groove.grid(), groove.voicing().layers());
        for (Hit hit : groove.hits()) {
            cells.computeIfAbsent(new CellKey(hit.sound(), hit.written()), any -> new ArrayList<>())
                    .add(hit);
        }
    }

    static GridTable of(Groove groove) {
        return new GridTable(groove);
    }

    private static List<Row> rows(Groove groove) {
        Kit kit = groove.kit();
        List<SoundName> order = kit.soundNames();
        Comparator<SoundName> highFirst =
                Comparator.comparingInt((SoundName s) -> -height(kit, s))
                        .thenComparingInt(order::indexOf)
                        .thenComparing(Comparator.naturalOrder());
        return groove.hits().stream()
                .map(Hit::sound)
                .distinct()
                .sorted(highFirst)
                .map(sound -> new Row(sound, label(kit, sound)))
                .toList();
    }

    /** Half steps of the staff; a sound that the kit lacks stands below all. */
    private static int height(Kit kit, SoundName sound) {
        if (!kit.has(sound)) {
            return -1;
        }
        StaffPlace place = kit.sound(sound).place();
        return 2 * place.diatonic() + (place.sharp() ? 1 : 0);
    }

    private static String label(Kit kit, SoundName sound) {
        if (!kit.has(sound)) {
            return sound.text();
        }
        Surface surface = kit.surfaceOf(sound);
        boolean first = surface.sounds().get(0).id().equals(sound.sound());
        return first ? surface.name() : surface.name() + " " + sound.sound();
    }

    private static List<Column> columns(Grid grid, List<Layer> layers) {
        long beat = grid.meter().beatTicks();
        SortedSet<Long> inBeat = new TreeSet<>();
        addSteps(inBeat, beat, grid.stepsPerBeat());
        layers.forEach(layer -> addSteps(inBeat, beat, layer.stepsPerBeat()));
        List<String> labels = CountSyllables.ofBar(grid);
        List<Column> columns = new ArrayList<>();
        for (int b = 0; b < grid.meter().beats(); b++) {
            for (long offset : inBeat) {
                long inBar = b * beat + offset;
                boolean isStep = inBar % grid.stepTicks() == 0;
                int step = Math.toIntExact(inBar / grid.stepTicks());
                columns.add(
                        new Column(
                                inBar,
                                isStep ? labels.get(step) : "",
                                step + 1,
                                isStep,
                                offset == 0));
            }
        }
        return columns;
    }

    private static void addSteps(SortedSet<Long> inBeat, long beat, int steps) {
        for (int i = 0; i < steps; i++) {
            inBeat.add(beat / steps * i);
        }
    }

    Groove groove() {
        return groove;
    }

    List<Row> rows() {
        return rows;
    }

    /** The columns of any bar. */
    List<Column> columns() {
        return columns;
    }

    /** The hits of one cell, by limb; most often none or one. {@code bar} counts from 1. */
    List<Hit> hits(Row row, int bar, Column column) {
        long written = (bar - 1) * groove.grid().meter().barTicks() + column.inBar();
        return cells.getOrDefault(new CellKey(row.sound(), written), List.of());
    }
}
