package org.kitweft.ui.transport;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalInt;
import org.kitweft.groove.Tempo;

/**
 * The tempo of a hand that taps along: the mean of the last taps. A long pause begins anew. The
 * caller reads the clock.
 */
final class TapTempo {
    private static final int MOST_TAPS = 8;
    private static final double NANOS_PER_MINUTE = 60e9;

    /** Slower than the slowest tempo there is. */
    private static final long PAUSE = (long) (NANOS_PER_MINUTE / Tempo.SLOWEST);

    private final Deque<Long> taps = new ArrayDeque<>();

    /**
     * One tap.
     *
     * @param nanos when
     * @return the tempo, from the second tap on
     */
    OptionalInt tap(long nanos) {
        if (!taps.isEmpty() && nanos - taps.getLast() > PAUSE) {
            taps.clear();
        }
        taps.addLast(nanos);
        if (taps.size() > MOST_TAPS) {
            taps.removeFirst();
        }
        if (taps.size() < 2) {
            return OptionalInt.empty();
        }
        double mean = (double) (taps.getLast() - taps.getFirst()) / (taps.size() - 1);
        long tempo = Math.round(NANOS_PER_MINUTE / mean);
        return OptionalInt.of((int) Math.max(Tempo.SLOWEST, Math.min(Tempo.FASTEST, tempo)));
    }
}
