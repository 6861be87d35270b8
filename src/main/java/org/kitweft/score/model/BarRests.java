package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Ticks;

/**
 * Rests of a beat and longer.
 *
 * <p>A silent beat has a rest of its own; two are joined only where the meter shows through: the
 * halves of 2/4 and 4/4 (never across the middle), the halves of 12/8. Common practice, no source.
 */
final class BarRests {
    private BarRests() {}

    /** The rests of a silent group of beats. */
    static List<Rest> emptyGroup(long start, long length, Meter meter) {
        long eighth = Ticks.PER_QUARTER / 2;
        if (meter.isCompound()) {
            return List.of(new Rest(start, length, NoteValue.QUARTER, 1, false));
        }
        if (length == eighth) {
            return List.of(new Rest(start, length, NoteValue.EIGHTH, 0, false));
        }
        if (length == 2 * eighth) {
            return List.of(new Rest(start, length, NoteValue.QUARTER, 0, false));
        }
        return List.of(
                new Rest(start, 2 * eighth, NoteValue.QUARTER, 0, false),
                new Rest(start + 2 * eighth, eighth, NoteValue.EIGHTH, 0, false));
    }

    /** The rest of a silent bar. */
    static Voice emptyBar(Meter meter) {
        return new Voice(
                1,
                Stems.UP,
                List.of(new Rest(0, meter.barTicks(), NoteValue.WHOLE, 0, true)),
                List.of());
    }

    /** The events with neighbouring rests joined where the meter allows it. */
    static List<Event> join(Meter meter, List<Event> events, List<Tuplet> tuplets) {
        List<Event> joined = new ArrayList<>();
        int removed = 0;
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            if (i + 1 < events.size() && joins(meter, event, events.get(i + 1))) {
                joined.add(
                        new Rest(
                                event.tick(),
                                2 * event.ticks(),
                                NoteValue.HALF,
                                event.dots(),
                                false));
                shift(tuplets, i - removed);
                removed++;
                i++;
            } else {
                joined.add(event);
            }
        }
        return joined;
    }

    private static boolean joins(Meter meter, Event one, Event other) {
        boolean meterAllows =
                (meter.unit() == 4 && (meter.count() == 2 || meter.count() == 4))
                        || (meter.isCompound() && meter.beats() == 4);
        return meterAllows
                && one instanceof Rest
                && other instanceof Rest
                && one.ticks() == meter.beatTicks()
                && other.ticks() == meter.beatTicks()
                && one.tick() % (2 * meter.beatTicks()) == 0;
    }

    /** Two events at an index have become one: tuplets after them move up. */
    private static void shift(List<Tuplet> tuplets, int index) {
        tuplets.replaceAll(
                t ->
                        t.first() > index
                                ? new Tuplet(
                                        t.first() - 1,
                                        t.last() - 1,
                                        t.actual(),
                                        t.normal(),
                                        t.unit(),
                                        t.bracket())
                                : t);
    }
}
