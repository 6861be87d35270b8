package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Place;
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
 * that has it on that channel; notes that no surface of the kit has are left out and named.
 */
public final class NoteReader {
    /** A note further from its step than so many steps is named: it may belong to another. */
    public static final double OFF_THE_GRID = 0.25;

    /**
     * A groove read from notes.
     *
     * @param target what was read; its bars, and those of all places here, are counted from the
     *     first bar that has a note
     * @param emptyBars the bars before that one, which were left out, 0 or more
     * @param furthest how far from its step the furthest note lay, in steps, 0 to 0.5; large values
     *     say that the grid does not fit
     * @param offTheGrid the steps to which a note was drawn from more than {@value #OFF_THE_GRID}
     *     of a step away, in order
     * @param leftOut the notes that the kit has no sound for, by channel and key
     */
    public record Read(
            Target target,
            int emptyBars,
            double furthest,
            List<Place> offTheGrid,
            List<LeftOut> leftOut) {
        public Read {
            offTheGrid = List.copyOf(offTheGrid);
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * Notes of one key that no surface of the kit has.
     *
     * @param channel 1 to 16
     * @param key 0 to 127
     * @param count how many there are, 1 or more
     * @param first the step nearest to the first of them
     */
    public record LeftOut(int channel, int key, int count, Place first) {
        /** In a sentence: {@code key 81 on channel 10 (3 times, first in bar 1 step 5)}. */
        public String words() {
            return "key %d on channel %d (%s%s)"
                    .formatted(key, channel, count == 1 ? "" : count + " times, first in ", first);
        }
    }

    private static final int KEYS = 128;
    private static final int MOST_NAMED = 4;

    private NoteReader() {}

    /**
     * Reads notes; whole bars without a note at the start are left out, and notes beyond the last
     * whole bar they begin in make one more bar.
     *
     * @param notes at least one, in any order
     * @param ticksPerQuarter the file's division, 1 or more
     * @throws IllegalArgumentException if the kit has a sound for none of the notes, or one of them
     *     lies beyond the longest groove
     */
    public static Read read(List<NoteOn> notes, int ticksPerQuarter, Kit kit, Grid grid) {
        if (ticksPerQuarter < 1) {
            throw new IllegalArgumentException(
                    "%d ticks per quarter: expected 1 or more".formatted(ticksPerQuarter));
        }
        if (notes.isEmpty()) {
            throw new IllegalArgumentException("no notes: expected at least one");
        }
        int emptyBars = emptyBars(notes, ticksPerQuarter, grid);
        long start = emptyBars * grid.meter().barTicks();
        Map<List<Integer>, SoundName> byKey = byKey(kit);
        TreeMap<Integer, Map<String, Strike>> heard = new TreeMap<>();
        double furthest = 0;
        TreeSet<Place> offTheGrid = new TreeSet<>();
        TreeMap<Integer, LeftOut> leftOut = new TreeMap<>();
        for (NoteOn note : notes) {
            SoundName sound = byKey.get(List.of(note.channel(), note.key()));
            double ticks = Math.max(0, ticks(note, ticksPerQuarter) - start);
            if (ticks > (double) Groove.MAX_BARS * grid.meter().barTicks()) {
                throw new IllegalArgumentException(
                        "note at tick %d: expected at most %d bars"
                                .formatted(note.tick(), Groove.MAX_BARS));
            }
            int step = nearestStep(ticks, grid);
            Place place = new Place(step / grid.stepsPerBar() + 1, step % grid.stepsPerBar() + 1);
            if (sound == null) {
                LeftOut one = new LeftOut(note.channel(), note.key(), 1, place);
                leftOut.merge(note.channel() * KEYS + note.key(), one, NoteReader::both);
                continue;
            }
            double away = Math.abs(ticks - sounding(step, grid)) / grid.stepTicks();
            furthest = Math.max(furthest, away);
            if (away > OFF_THE_GRID) {
                offTheGrid.add(place);
            }
            heard.computeIfAbsent(step, none -> new TreeMap<>())
                    .merge(
                            sound.text(),
                            new Strike(sound, dynamicOf(note.velocity()), Ornament.NONE),
                            Strike::with);
        }
        if (heard.isEmpty()) {
            throw new IllegalArgumentException(
                    "kit \"%s\" has a sound for none of the notes: %s"
                            .formatted(kit.name(), words(List.copyOf(leftOut.values()))));
        }
        int bars = heard.lastKey() / grid.stepsPerBar() + 1;
        List<List<Strike>> steps = new ArrayList<>();
        for (int step = 0; step < bars * grid.stepsPerBar(); step++) {
            steps.add(List.copyOf(heard.getOrDefault(step, Map.of()).values()));
        }
        return new Read(
                new Target(kit, grid, steps),
                emptyBars,
                Math.min(0.5, furthest),
                List.copyOf(offTheGrid),
                List.copyOf(leftOut.values()));
    }

    private static int emptyBars(List<NoteOn> notes, int ticksPerQuarter, Grid grid) {
        double first =
                notes.stream().mapToDouble(note -> ticks(note, ticksPerQuarter)).min().orElse(0);
        double longest = (double) Groove.MAX_BARS * grid.meter().barTicks();
        return nearestStep(Math.min(first, longest), grid) / grid.stepsPerBar();
    }

    private static double ticks(NoteOn note, int ticksPerQuarter) {
        return (double) note.tick() * Ticks.PER_QUARTER / ticksPerQuarter;
    }

    private static LeftOut both(LeftOut one, LeftOut other) {
        return new LeftOut(
                one.channel,
                one.key,
                one.count + other.count,
                one.first.compareTo(other.first) <= 0 ? one.first : other.first);
    }

    /** The first few of what was left out, and how many more. */
    public static String words(List<LeftOut> leftOut) {
        return leftOut.stream()
                        .limit(MOST_NAMED)
                        .map(LeftOut::words)
                        .collect(Collectors.joining(", "))
                + (leftOut.size() > MOST_NAMED
                        ? " and %d keys more".formatted(leftOut.size() - MOST_NAMED)
                        : "");
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
