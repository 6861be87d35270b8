package org.kitweft.groove;

import org.kitweft.pattern.Dynamic;

/**
 * MIDI velocities of the dynamics. Our own choice: far enough apart that each falls into another
 * dynamic layer of a sound bank.
 */
public final class Velocity {
    /**
     * Grace notes are low strokes just before the note they lead to. Common practice, no source.
     */
    public static final int GRACE = 48;

    private Velocity() {}

    /** The velocity of a dynamic, 1 to 127. */
    public static int of(Dynamic dynamic) {
        return switch (dynamic) {
            case GHOST -> 40;
            case PLAIN -> 80;
            case ACCENT -> 115;
        };
    }
}
