package org.kitweft.band;

/**
 * One note of the band.
 *
 * @param tick where it sounds, swing considered, in ticks from the start of the phrase
 * @param durationTicks how long it sounds, from 1
 * @param key MIDI key, 0 to 127
 * @param velocity MIDI velocity, 1 to 127
 */
public record BandNote(long tick, long durationTicks, int key, int velocity) {
    public BandNote {
        if (tick < 0 || durationTicks < 1) {
            throw new IllegalArgumentException(
                    "a note at tick %d of %d ticks: expected a start from 0, a length from 1"
                            .formatted(tick, durationTicks));
        }
        if (key < 0 || key > 127 || velocity < 1 || velocity > 127) {
            throw new IllegalArgumentException(
                    "key %d, velocity %d: expected 0 to 127 and 1 to 127".formatted(key, velocity));
        }
    }

    /** The tick after its last. */
    public long end() {
        return tick + durationTicks;
    }
}
