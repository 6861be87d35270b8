package org.kitweft.groove;

/**
 * How fast beats follow each other.
 *
 * @param beatsPerMinute {@value #SLOWEST} to {@value #FASTEST} beats of the meter in a minute
 */
public record Tempo(int beatsPerMinute) {
    /** The slowest tempo. */
    public static final int SLOWEST = 20;

    /** The fastest tempo. */
    public static final int FASTEST = 400;

    /** Where nothing is said. */
    public static final Tempo DEFAULT = new Tempo(90);

    public Tempo {
        if (beatsPerMinute < SLOWEST || beatsPerMinute > FASTEST) {
            throw new IllegalArgumentException(
                    "tempo %d: expected %d to %d beats a minute"
                            .formatted(beatsPerMinute, SLOWEST, FASTEST));
        }
    }

    /** Seconds that so many ticks of a meter last. */
    public double seconds(long ticks, Meter meter) {
        return ticks * 60.0 / ((double) beatsPerMinute * meter.beatTicks());
    }

    /** Microseconds of a quarter note in a meter, as MIDI files want it, rounded. */
    public int microsecondsPerQuarter(Meter meter) {
        return Math.toIntExact(
                Math.round(
                        60e6 * Ticks.PER_QUARTER / ((double) beatsPerMinute * meter.beatTicks())));
    }
}
