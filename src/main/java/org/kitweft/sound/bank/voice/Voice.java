package org.kitweft.sound.bank.voice;

import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/** One way of sounding, from soft to hard. */
@FunctionalInterface
public interface Voice {
    /** Samples a second of a percussion voice, if it does not choose fewer. */
    int RATE = 44_100;

    /**
     * A rate for long bright sounds: soft strokes hold little above 12 kHz, so they need fewer
     * samples.
     */
    static int thriftyRate(double strength) {
        if (strength > 0.8) {
            return RATE;
        }
        return strength > 0.5 ? 32_000 : 24_000;
    }

    /**
     * Renders the sound, at any loudness: the finish levels it.
     *
     * @param strength speed of the stroke, above 0, hardest 1
     * @param noise where chance comes from
     */
    Wave render(double strength, Noise noise);
}
