package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Ticks;

/**
 * Joins flagged chords under beams, beat by beat.
 *
 * <p>The outermost beam joins all neighbouring flagged chords of a group of beats; rests and longer
 * notes break it. Of notes shorter than a sixteenth, the inner beams break at each eighth, so that
 * the reader finds his place; so do those of joined beats in meters such as 7/8, and at the middle
 * of a tuplet of twelve. Common practice, no source.
 */
final class Beaming {
    private static final long EIGHTH_TICKS = Ticks.PER_QUARTER / 2;

    private Beaming() {}

    /** The events with their beams. */
    static List<Event> beamed(Meter meter, List<Event> events, List<Tuplet> tuplets) {
        List<Event> result = new ArrayList<>(events);
        long groupStart = 0;
        for (int beats : BeatGroups.of(meter)) {
            long groupEnd = groupStart + beats * meter.beatTicks();
            List<Integer> run = new ArrayList<>();
            for (int i = 0; i < events.size(); i++) {
                Event event = events.get(i);
                if (event.tick() < groupStart || event.tick() >= groupEnd) {
                    continue;
                }
                if (event instanceof Chord && event.value().flags() > 0) {
                    run.add(i);
                } else {
                    beam(result, run, tuplets, groupStart);
                    run.clear();
                }
            }
            beam(result, run, tuplets, groupStart);
            groupStart = groupEnd;
        }
        return result;
    }

    /** The tuplets, each with a bracket unless one beam joins exactly its events. */
    static List<Tuplet> bracketed(List<Event> events, List<Tuplet> tuplets) {
        return tuplets.stream()
                .map(
                        t ->
                                new Tuplet(
                                        t.first(),
                                        t.last(),
                                        t.actual(),
                                        t.normal(),
                                        t.unit(),
                                        t.first() == t.last()
                                                || events.subList(t.first(), t.last() + 1).stream()
                                                        .anyMatch(
                                                                e ->
                                                                        e instanceof Rest
                                                                                || e.value().flags()
                                                                                        == 0)))
                .toList();
    }

    private static void beam(
            List<Event> events, List<Integer> run, List<Tuplet> tuplets, long groupStart) {
        if (run.size() < 2) {
            return;
        }
        int levels = run.stream().mapToInt(i -> events.get(i).value().flags()).max().orElse(0);
        List<List<Beam>> beams = new ArrayList<>();
        run.forEach(any -> beams.add(new ArrayList<>()));
        for (int level = 1; level <= levels; level++) {
            int from = 0;
            while (from < run.size()) {
                if (events.get(run.get(from)).value().flags() < level) {
                    from++;
                    continue;
                }
                int to = from;
                while (to + 1 < run.size()
                        && events.get(run.get(to + 1)).value().flags() >= level
                        && (level == 1 || !breaks(events, run, to + 1, tuplets, groupStart))) {
                    to++;
                }
                mark(events, run, beams, from, to, groupStart);
                from = to + 1;
            }
        }
        for (int i = 0; i < run.size(); i++) {
            Chord chord = (Chord) events.get(run.get(i));
            events.set(run.get(i), chord.withBeams(beams.get(i)));
        }
    }

    private static void mark(
            List<Event> events,
            List<Integer> run,
            List<List<Beam>> beams,
            int from,
            int to,
            long groupStart) {
        if (from == to) {
            Event event = events.get(run.get(from));
            boolean forward =
                    from == 0
                            || (from < run.size() - 1
                                    && (event.tick() - groupStart) % (2 * event.ticks()) == 0);
            beams.get(from).add(forward ? Beam.FORWARD_HOOK : Beam.BACKWARD_HOOK);
            return;
        }
        for (int i = from; i <= to; i++) {
            beams.get(i).add(i == from ? Beam.BEGIN : i == to ? Beam.END : Beam.CONTINUE);
        }
    }

    /** Whether inner beams break before a chord of a run. */
    private static boolean breaks(
            List<Event> events, List<Integer> run, int at, List<Tuplet> tuplets, long groupStart) {
        int index = run.get(at);
        int before = run.get(at - 1);
        Optional<Tuplet> tuplet = tupletOf(tuplets, index);
        if (!tuplet.equals(tupletOf(tuplets, before))) {
            return true;
        }
        long inGroup = events.get(index).tick() - groupStart;
        if (tuplet.isPresent()) {
            long from = events.get(tuplet.get().first()).tick();
            long half = (events.get(tuplet.get().last()).end() - from) / 2;
            return tuplet.get().actual() == 12 && events.get(index).tick() - from == half;
        }
        boolean fine =
                run.stream()
                        .anyMatch(
                                i ->
                                        events.get(i).value().compareTo(NoteValue.SIXTEENTH) > 0
                                                && tupletOf(tuplets, i).isEmpty());
        return fine && inGroup % EIGHTH_TICKS == 0;
    }

    private static Optional<Tuplet> tupletOf(List<Tuplet> tuplets, int index) {
        return tuplets.stream().filter(t -> t.covers(index)).findFirst();
    }
}
