package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Ticks;
import org.kitweft.groove.Velocity;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * Lays the notes of a MIDI file on a grid. Each note goes to the nearest step, swing considered;
 * two notes of one sound that meet there, as a grace note and its main note, become one. A velocity
 * counts as the dynamic whose own velocity is nearest. A key stands for the first sound of the kit
 * that has it on that channel.
 */
public final class NoteReader {
    /**
     * A groove read from notes.
     *
     * @param target what was read
     * @param furthest how far from its step the furthest note lay, in steps, 0 to 0.5; large values
     *     say that the grid does not fit
     */
    public record Read(Target target, double furthest) {}

    private NoteReader() {}

    /**
     * Reads notes; those beyond the last whole bar they begin in make one more bar.
     *
     * @param notes at least one, in any order
     * @param ticksPerQuarter the file's division, 1 or more
     * @throws IllegalArgumentException naming the first note whose key the kit does not have, or
     *     that lies beyond the longest groove
     */
    public static Read read(List<NoteOn> notes, int ticksPerQuarter, Kit kit, Grid grid) {
        if (ticksPerQuarter < 1) {
            throw new IllegalArgumentException(
                    "%d ticks per quarter: expected 1 or more".formatted(ticksPerQuarter));
        }
        if (notes.isEmpty()) {
            throw new IllegalArgumentException("no notes: expected at least one");
        }
        Map<List<Integer>, SoundName> byKey = byKey(kit);
        TreeMap<Integer, Map<String, Strike>> heard = new TreeMap<>();
        double furthest = 0;
        for (NoteOn note : notes) {
            SoundName sound = byKey.get(List.of(note.channel(), note.key()));
            if (sound == null) {
                throw new IllegalArgumentException(
                        "note at tick %d: kit \"%s\" has no sound with key %d on channel %d"
                                .formatted(note.tick(), kit.name(), note.key(), note.channel()));
            }
            double ticks = (double) note.tick() * Ticks.PER_QUARTER / ticksPerQuarter;
            if (ticks > (double) Groove.MAX_BARS * grid.meter().barTicks()) {
                throw new IllegalArgumentException(
                        "note at tick %d: expected at most %d bars"
                                .formatted(note.tick(), Groove.MAX_BARS));
            }
            int step = nearestStep(ticks, grid);
            furthest = Math.max(furthest, Math.abs(ticks - sounding(step, grid)));
            heard.computeIfAbsent(step, none -> new TreeMap<>())
                    .merge(
                            sound.text(),
                            new Strike(sound, dynamicOf(note.velocity()), Ornament.NONE),
                            Strike::with);
        }
        int bars = heard.lastKey() / grid.stepsPerBar() + 1;
        List<List<Strike>> steps = new ArrayList<>();
        for (int step = 0; step < bars * grid.stepsPerBar(); step++) {
            steps.add(List.copyOf(heard.getOrDefault(step, Map.of()).values()));
        }
        return new Read(new Target(kit, grid, steps), Math.min(0.5, furthest / grid.stepTicks()));
    }

    private static Map<List<Integer>, SoundName> byKey(Kit kit) {
        Map<List<Integer>, SoundName> byKey = new HashMap<>();
        for (Surface surface : kit.surfaces()) {
            for (Sound sound : surface.sounds()) {
                byKey.putIfAbsent(List.of(sound.channel(), sound.key()), surface.nameOf(sound));
            }
        }
        return byKey;
    }

    private static int nearestStep(double ticks, Grid grid) {
        int near = (int) (ticks / grid.stepTicks());
        int best = near;
        for (int step = Math.max(0, near - 1); step <= near + 1; step++) {
            if (Math.abs(ticks - sounding(step, grid)) < Math.abs(ticks - sounding(best, grid))) {
                best = step;
            }
        }
        return best;
    }

    private static long sounding(int step, Grid grid) {
        return grid.sounding(step * grid.stepTicks(), grid.stepsPerBeat());
    }

    private static Dynamic dynamicOf(int velocity) {
        Dynamic nearest = Dynamic.PLAIN;
        for (Dynamic dynamic : Dynamic.values()) {
            if (Math.abs(velocity - Velocity.of(dynamic))
                    < Math.abs(velocity - Velocity.of(nearest))) {
                nearest = dynamic;
            }
        }
        return nearest;
    }
}
