package org.kitweft.band;

import java.util.Locale;
import java.util.Optional;
import org.kitweft.groove.Meter;

/** How strong a place in the bar is, from strong to weak. */
enum MetricPlace {
    /** The first beat of the bar. */
    DOWNBEAT(4),
    /** Another beat. */
    BEAT(2),
    /** Half way between beats; in compound meters a third of a beat. */
    OFFBEAT(0),
    /** Anywhere else. */
    OTHER(-3);

    private final int louder;

    MetricPlace(int louder) {
        this.louder = louder;
    }

    static MetricPlace of(long ticksInBar, Meter meter) {
        long beat = meter.beatTicks();
        if (ticksInBar == 0) {
            return DOWNBEAT;
        }
        if (ticksInBar % beat == 0) {
            return BEAT;
        }
        return ticksInBar % (beat / (meter.isCompound() ? 3 : 2)) == 0 ? OFFBEAT : OTHER;
    }

    static Optional<MetricPlace> of(String id) {
        for (MetricPlace place : values()) {
            if (place.id().equals(id)) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What is added to a velocity here. Our own choice: audible, far smaller than an accent. */
    int louder() {
        return louder;
    }
}
