package org.kitweft.sound;

import java.util.Objects;
import org.kitweft.groove.Feel;

/**
 * What of a phrase is played in one loop: which bars, and how fast the drums go against the beat.
 * Immutable.
 *
 * @param from the first bar, from 1
 * @param to the last bar, not before the first; bars that a phrase does not have are left out, and
 *     where it has none of them it is played whole
 * @param feel half time, as written, double time
 */
public record Stretch(int from, int to, Feel feel) {
    /** All bars as they are written. */
    public static final Stretch WHOLE = new Stretch(1, Integer.MAX_VALUE, Feel.AS_WRITTEN);

    public Stretch {
        Objects.requireNonNull(feel, "feel");
        if (from < 1 || to < from) {
            throw new IllegalArgumentException(
                    "bars %d to %d: expected 1 or more, the last not before the first"
                            .formatted(from, to));
        }
    }

    /** The same at another feel. */
    public Stretch with(Feel other) {
        return new Stretch(from, to, other);
    }

    /** The same of other bars. */
    public Stretch withBars(int first, int last) {
        return new Stretch(first, last, feel);
    }

    /** The same of all bars. */
    public Stretch ofAllBars() {
        return withBars(WHOLE.from, WHOLE.to);
    }

    /** Whether bars may be left out. */
    public boolean isCut() {
        return from > WHOLE.from || to < WHOLE.to;
    }

    /** The first bar that is played of a phrase of so many. */
    public int firstOf(int bars) {
        return from > bars ? 1 : from;
    }

    /** The last bar that is played of a phrase of so many. */
    public int lastOf(int bars) {
        return from > bars ? bars : Math.min(to, bars);
    }

    /** The bars that are played of a phrase and its band. */
    Playable of(Playable whole) {
        int bars = whole.phrase().bars();
        return firstOf(bars) == 1 && lastOf(bars) == bars
                ? whole
                : whole.bars(firstOf(bars), lastOf(bars));
    }
}
