package org.kitweft.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * From ticks to seconds. Second 0 is tick 0; before its first pace the first one holds, after its
 * last one the last. Immutable.
 */
public final class TempoMap {
    private final List<Pace> paces;
    private final long[] ticks;
    private final double[] secondsAt;

    /**
     * @param all by tick, ascending, at least one; those that change nothing are left out
     */
    public TempoMap(List<Pace> all) {
        this.paces = List.copyOf(changes(all));
        this.ticks = paces.stream().mapToLong(Pace::tick).toArray();
        this.secondsAt = new double[ticks.length];
        for (int i = 1; i < ticks.length; i++) {
            secondsAt[i] = secondsAt[i - 1] + inPace(i - 1, ticks[i]);
        }
        double zero = seconds(0);
        for (int i = 0; i < ticks.length; i++) {
            secondsAt[i] -= zero;
        }
    }

    private static List<Pace> changes(List<Pace> all) {
        if (all.isEmpty()) {
            throw new IllegalArgumentException("a tempo map has at least one pace");
        }
        List<Pace> kept = new ArrayList<>(List.of(all.get(0)));
        for (int i = 1; i < all.size(); i++) {
            Pace pace = all.get(i);
            if (pace.tick() <= all.get(i - 1).tick()) {
                throw new IllegalArgumentException(
                        "the paces of a tempo map ascend, but tick %d follows tick %d"
                                .formatted(pace.tick(), all.get(i - 1).tick()));
            }
            Pace last = kept.get(kept.size() - 1);
            if (!last.meter().equals(pace.meter()) || !last.tempo().equals(pace.tempo())) {
                kept.add(pace);
            }
        }
        return kept;
    }

    /** Meter and tempo, wherever one of them changes; by tick, ascending. */
    public List<Pace> paces() {
        return paces;
    }

    /** Seconds from tick 0 to a tick; negative before it. */
    public double seconds(long tick) {
        int found = Arrays.binarySearch(ticks, tick);
        int pace = Math.max(0, found >= 0 ? found : -found - 2);
        return secondsAt[pace] + inPace(pace, tick);
    }

    private double inPace(int pace, long tick) {
        Pace holds = paces.get(pace);
        return holds.tempo().seconds(tick - ticks[pace], holds.meter());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TempoMap map && paces.equals(map.paces);
    }

    @Override
    public int hashCode() {
        return paces.hashCode();
    }

    @Override
    public String toString() {
        return paces.toString();
    }
}
