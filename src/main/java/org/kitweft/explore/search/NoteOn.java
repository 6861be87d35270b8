package org.kitweft.explore.search;

/**
 * One Note On message of a MIDI file, as plain numbers.
 *
 * @param tick from the start, in the file's ticks, 0 or more
 * @param channel 1 to 16, as musicians count
 * @param key 0 to 127
 * @param velocity 1 to 127
 */
public record NoteOn(long tick, int channel, int key, int velocity) {
    public NoteOn {
        if (tick < 0) {
            throw new IllegalArgumentException("tick %d: expected 0 or more".formatted(tick));
        }
        check("channel", channel, 1, 16);
        check("key", key, 0, 127);
        check("velocity", velocity, 1, 127);
    }

    private static void check(String what, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "%s %d: expected %d to %d".formatted(what, value, least, most));
        }
    }
}
