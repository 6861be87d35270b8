package org.kitweft.sound;

import java.util.Comparator;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One sounding note: a hit, one of its grace notes or bounces, or a click.
 *
 * @param tick where it sounds, in {@link org.kitweft.groove.Ticks}; negative before the phrase
 * @param ticks how long it is held, above 0
 * @param written the tick at which it is written, or its hit is: an edit is heard from a written
 *     tick on
 * @param channel MIDI channel, 1 to 16 as musicians count
 * @param program MIDI program, 0 to 127 as sent; empty for percussion
 * @param key MIDI key, 0 to 127
 * @param velocity 1 to 127
 * @param stops keys of the same channel that it silences
 * @param part who plays it
 */
public record Note(
        long tick,
        long ticks,
        long written,
        int channel,
        OptionalInt program,
        int key,
        int velocity,
        Set<Integer> stops,
        Part part) {

    /** In time, then by channel and key. */
    public static final Comparator<Note> IN_TIME =
            Comparator.comparingLong(Note::tick)
                    .thenComparingInt(Note::channel)
                    .thenComparingInt(Note::key)
                    .thenComparingInt(Note::velocity);

    public Note {
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(part, "part");
        stops = Set.copyOf(stops);
        if (ticks < 1) {
            throw new IllegalArgumentException("a note lasts at least one tick, not " + ticks);
        }
        if (channel < 1 || channel > 16) {
            throw new IllegalArgumentException("channel %d: expected 1 to 16".formatted(channel));
        }
        if (key < 0 || key > 127) {
            throw new IllegalArgumentException("key %d: expected 0 to 127".formatted(key));
        }
        if (velocity < 1 || velocity > 127) {
            throw new IllegalArgumentException(
                    "velocity %d: expected 1 to 127".formatted(velocity));
        }
    }

    /** Where it ends. */
    public long end() {
        return tick + ticks;
    }

    /** Whether both are the same key of the same channel. */
    public boolean sameKey(Note other) {
        return channel == other.channel && key == other.key;
    }

    /** Whether it silences another note of the same channel. */
    public boolean silences(Note other) {
        return channel == other.channel && (key == other.key || stops.contains(other.key));
    }

    /** The same note later by so many ticks. */
    public Note later(long by) {
        return by == 0
                ? this
                : new Note(
                        tick + by,
                        ticks,
                        written + by,
                        channel,
                        program,
                        key,
                        velocity,
                        stops,
                        part);
    }

    /** The same note held for so many ticks. */
    public Note lasting(long other) {
        return other == ticks
                ? this
                : new Note(tick, other, written, channel, program, key, velocity, stops, part);
    }

    /** The same note at another velocity. */
    public Note withVelocity(int other) {
        return other == velocity
                ? this
                : new Note(tick, ticks, written, channel, program, key, other, stops, part);
    }
}
