package org.kitweft.sound;

import java.util.Objects;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;

/**
 * Meter and tempo from a tick on, until the next.
 *
 * @param tick from where
 * @param meter whose beats the tempo counts
 * @param tempo how fast the beats follow each other
 */
public record Pace(long tick, Meter meter, Tempo tempo) {
    public Pace {
        Objects.requireNonNull(meter, "meter");
        Objects.requireNonNull(tempo, "tempo");
    }
}
