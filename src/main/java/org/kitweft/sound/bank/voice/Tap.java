package org.kitweft.sound.bank.voice;

import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.render.Wave;

/**
 * The short noise of stick, beater or hand on the surface, beside the ringing that follows.
 *
 * @param hertz middle of its band at the hardest stroke
 * @param q sharpness of the band
 * @param level against the peak of the ringing, at the hardest stroke
 * @param decay seconds to fall by 60 dB
 */
public record Tap(double hertz, double q, double level, double decay) {
    /** Softer strokes are duller (a longer contact) and their tap weaker against the ringing. */
    void addTo(Wave wave, double strength, Noise noise) {
        double middle = hertz * (0.6 + 0.4 * strength);
        double amplitude = level * 0.5 * Math.sqrt(strength);
        new NoiseBand(middle, q, amplitude, 0.0004, decay).addTo(wave, noise, 0);
    }
}
