package org.kitweft.sound.bank.pitched;

import org.kitweft.sound.bank.render.Noise;

/** One way of sounding on any key. */
@FunctionalInterface
public interface KeyVoice {
    /**
     * Renders a key.
     *
     * @param key MIDI key
     * @param strength speed of the stroke, above 0, hardest 1
     * @param noise where chance comes from
     */
    Rendered render(int key, double strength, Noise noise);
}
