package org.kitweft.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * From ticks to seconds. Second 0 is tick 0; before its first pace the first one holds, after its
 * last one the last. Immutable.
 *
 * @param paces by tick, ascending, at least one
 */
public record TempoMap(List<Pace> paces) {
    public TempoMap {
        paces = List.copyOf(paces);
        if (paces.isEmpty()) {
            throw new IllegalArgumentException("a tempo map has at least one pace");
        }
        for (int i = 1; i < paces.size(); i++) {
            if (paces.get(i).tick() <= paces.get(i - 1).tick()) {
                throw new IllegalArgumentException(
                        "the paces of a tempo map ascend, but tick %d follows tick %d"
                                .formatted(paces.get(i).tick(), paces.get(i - 1).tick()));
            }
        }
    }

    /** The same map without paces that change nothing. */
    static TempoMap of(List<Pace> all) {
        List<Pace> kept = new ArrayList<>();
        for (Pace pace : all) {
            Pace last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            if (last == null
                    || !last.meter().equals(pace.meter())
                    || !last.tempo().equals(pace.tempo())) {
                kept.add(pace);
            }
        }
        return new TempoMap(kept);
    }

    /** Seconds from tick 0 to a tick; negative before it. */
    public double seconds(long tick) {
        return tick >= 0 ? between(0, tick) : -between(tick, 0);
    }

    /** Seconds between two ticks, the first not after the second. */
    private double between(long from, long to) {
        double seconds = 0;
        long at = from;
        for (int i = 0; i < paces.size(); i++) {
            long end = i + 1 < paces.size() ? paces.get(i + 1).tick() : Long.MAX_VALUE;
            if (end > at && at < to) {
                long stop = Math.min(end, to);
                Pace pace = paces.get(i);
                seconds += pace.tempo().seconds(stop - at, pace.meter());
                at = stop;
            }
        }
        return seconds;
    }
}
