package org.kitweft.sound;

import java.util.Locale;

/**
 * One part on the mixer.
 *
 * @param muted whether it is left out
 * @param solo whether only it, and others so marked, are heard
 * @param level its gain, 0 silent to 1
 * @param pan −1 left, 0 middle, 1 right
 */
public record Strip(boolean muted, boolean solo, double level, double pan) {
    private static final int MOST = 127;
    private static final int MIDDLE = 64;

    public Strip {
        check("level", level, 0);
        check("pan", pan, -1);
    }

    private static void check(String what, double value, int least) {
        if (!(value >= least && value <= 1)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s %s: expected %d to 1", what, value, least));
        }
    }

    /** In the middle, heard. */
    public static Strip at(double level) {
        return new Strip(false, false, level, 0);
    }

    /** The same, left out or not. */
    public Strip withMuted(boolean other) {
        return new Strip(other, solo, level, pan);
    }

    /** The same, solo or not. */
    public Strip withSolo(boolean other) {
        return new Strip(muted, other, level, pan);
    }

    /** The same at another level. */
    public Strip withLevel(double other) {
        return new Strip(muted, solo, other, pan);
    }

    /** The same at another place between left and right. */
    public Strip withPan(double other) {
        return new Strip(muted, solo, level, other);
    }

    /**
     * The level as MIDI channel volume, controller 7, 0 to 127. Synthesizers turn that into the
     * gain (value / 127)² (General MIDI Level 2, RP-024: 40 log(value / 127) dB), so we take the
     * root.
     */
    public int volumeController() {
        return (int) Math.round(MOST * Math.sqrt(level));
    }

    /** The pan as MIDI controller 10, 0 to 127, the middle at 64. */
    public int panController() {
        return (int) Math.round(MIDDLE + pan * (pan < 0 ? MIDDLE : MOST - MIDDLE));
    }
}
