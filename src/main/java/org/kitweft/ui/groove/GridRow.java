package org.kitweft.ui.groove;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.StaffPlace;
import org.kitweft.kit.Surface;

/**
 * One row of the grid: the sounds of a surface that stand at one place of the staff. So the pedal
 * of the hi-hat has a row of its own, and snare and cross-stick share one.
 *
 * @param label for people, e.g. {@code Hi-hat foot}
 * @param surface whose sounds they are
 * @param place where their notes stand
 * @param sounds at least one, in the surface's order
 */
public record GridRow(String label, Surface surface, StaffPlace place, List<SoundName> sounds) {
    public GridRow {
        sounds = List.copyOf(sounds);
    }

    private record Key(Surface surface, StaffPlace place) {}

    /** All rows of a kit in staff order, the highest note first. */
    static List<GridRow> of(Kit kit) {
        Map<Key, List<Sound>> grouped = new LinkedHashMap<>();
        for (Surface surface : kit.surfaces()) {
            for (Sound sound : surface.sounds()) {
                grouped.computeIfAbsent(new Key(surface, sound.place()), k -> new ArrayList<>())
                        .add(sound);
            }
        }
        List<GridRow> rows = new ArrayList<>();
        grouped.forEach((key, sounds) -> rows.add(row(key, sounds)));
        rows.sort(
                Comparator.comparing(
                                (GridRow row) ->
                                        2 * row.place().diatonic() + (row.place().sharp() ? 1 : 0))
                        .reversed());
        return rows;
    }

    private static GridRow row(Key key, List<Sound> sounds) {
        Surface surface = key.surface();
        boolean first = sounds.contains(surface.sounds().get(0));
        String label =
                first
                        ? surface.name()
                        : surface.name() + " " + sounds.get(0).id().replace('-', ' ');
        return new GridRow(
                label, surface, key.place(), sounds.stream().map(surface::nameOf).toList());
    }
}
