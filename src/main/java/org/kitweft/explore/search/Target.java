package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;
import org.kitweft.kit.Kit;

/**
 * A groove as it is heard, to be taken apart: what sounds at each step, whoever strikes it. It
 * comes from the grid on screen, from a groove, or from a MIDI file by {@link NoteReader}.
 *
 * @param kit on which kit; it has all the sounds
 * @param grid the steps
 * @param steps whole bars of steps, from 1 to {@link Groove#MAX_BARS} bars; at each step no sound
 *     twice, in the order of the sounds' names
 */
public record Target(Kit kit, Grid grid, List<List<Strike>> steps) {

    public Target {
        Objects.requireNonNull(kit, "kit");
        int perBar = grid.stepsPerBar();
        if (steps.isEmpty()
                || steps.size() % perBar != 0
                || steps.size() / perBar > Groove.MAX_BARS) {
            throw new IllegalArgumentException(
                    "%d steps: expected 1 to %d whole bars of %d steps"
                            .formatted(steps.size(), Groove.MAX_BARS, perBar));
        }
        List<List<Strike>> sorted = new ArrayList<>();
        for (int step = 0; step < steps.size(); step++) {
            TreeMap<String, Strike> atStep = new TreeMap<>();
            for (Strike strike : steps.get(step)) {
                kit.sound(strike.sound());
                if (atStep.put(strike.sound().text(), strike) != null) {
                    throw new IllegalArgumentException(
                            "%s: %s is struck twice".formatted(place(grid, step), strike.sound()));
                }
            }
            sorted.add(List.copyOf(atStep.values()));
        }
        steps = List.copyOf(sorted);
    }

    /**
     * What is heard of a groove. Swing does not matter.
     *
     * @throws IllegalArgumentException if a hit lies between the steps, as a layer's may
     */
    public static Target of(Groove groove) {
        Grid grid = groove.grid();
        List<TreeMap<String, Strike>> heard = new ArrayList<>();
        for (int step = 0; step < groove.bars() * grid.stepsPerBar(); step++) {
            heard.add(new TreeMap<>());
        }
        for (Hit hit : groove.hits()) {
            if (hit.written() % grid.stepTicks() != 0) {
                throw new IllegalArgumentException(
                        "%s: %s lies between the steps; choose a grid that has it"
                                .formatted(hit.place(), hit.sound()));
            }
            heard.get(Math.toIntExact(hit.written() / grid.stepTicks()))
                    .merge(hit.sound().text(), Strike.of(hit), Strike::with);
        }
        return new Target(
                groove.kit(),
                grid,
                heard.stream().map(atStep -> List.copyOf(atStep.values())).toList());
    }

    /** Its length in bars. */
    public int bars() {
        return steps.size() / grid.stepsPerBar();
    }

    /** The place of a step that counts from 0. */
    public Place place(int step) {
        return place(grid, step);
    }

    private static Place place(Grid grid, int step) {
        return new Place(step / grid.stepsPerBar() + 1, step % grid.stepsPerBar() + 1);
    }
}
