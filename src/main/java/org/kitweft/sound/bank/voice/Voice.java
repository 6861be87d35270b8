package org.kitweft.sound.bank.voice;

import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/** One way of sounding, from soft to hard. */
@FunctionalInterface
public interface Voice {
    /** Samples a second of every percussion voice. */
    int RATE = 44_100;

    /**
     * Renders the sound, at any loudness: the finish levels it.
     *
     * @param strength speed of the stroke, above 0, hardest 1
     * @param noise where chance comes from
     */
    Wave render(double strength, Noise noise);
}
