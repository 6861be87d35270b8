package org.kitweft.sound.bank.pitched;

import org.kitweft.sound.bank.render.Decay;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.render.Wave;

/**
 * A plucked string, ideal and stiff in nothing: harmonic n starts with sin(n&pi;p)/n for a pluck at
 * p of its length (Fletcher and Rossing ch. 2), is heard by a pickup at q with sin(n&pi;q), and
 * dies faster the higher it is. The first harmonic's decay is left to the synthesizer.
 *
 * @param pluck where it is plucked, 0 to 0.5
 * @param pickup where it is heard, 0 to 0.5; 0 for a body that hears all
 * @param softness power by which the finger's width takes the highs, at the hardest stroke
 * @param decay of the first harmonic at E1, in seconds
 * @param damping how much faster each next harmonic dies
 * @param noise level of finger and board
 */
record StringVoice(
        double pluck, double pickup, double softness, double decay, double damping, double noise)
        implements KeyVoice {
    private static final double ATTACK = 0.36;

    /** Decay of the first harmonic on a key: higher strings are shorter and lighter. */
    double decay(int key) {
        return decay * StrictMath.pow(2, (28 - key) / 24.0);
    }

    @Override
    public Rendered render(int key, double strength, Noise chance) {
        int rate = key < 60 ? 16_000 : 22_050;
        Loop loop = Loop.near(Pitch.hertz(key), rate, 0.07);
        int start = (int) (ATTACK * rate);
        Wave wave = new Wave(rate, new double[start + loop.frames() + 8]);
        double main = decay(key);
        for (int n = 1; n * loop.hertz() < 0.45 * rate && n <= 80; n++) {
            double amplitude = amplitude(n, strength);
            double faster = damping * (n - 1) / main;
            Partials.add(
                    wave,
                    n * loop.hertz(),
                    t -> amplitude * Decay.after(Math.min(t, ATTACK * 0.95) * faster, 1));
        }
        double gain = 1 / wave.peak();
        wave.gain(gain);
        Wave finger = new Wave(rate, ATTACK * 0.5);
        new NoiseBand(1600 + 1600 * strength, 0.7, noise * strength, 0.001, 0.03)
                .addTo(finger, chance, 0);
        new NoiseBand(240, 0.8, noise * 1.5, 0.002, 0.09).addTo(finger, chance, 0);
        wave.add(finger, 1, 0);
        return new Rendered(wave, start, start + loop.frames());
    }

    private double amplitude(int n, double strength) {
        double heard = pickup > 0 ? StrictMath.sin(n * Math.PI * pickup) : 1;
        double rolled = StrictMath.pow(n, -softness * (1.8 - 0.8 * strength));
        return StrictMath.sin(n * Math.PI * pluck) * heard * rolled;
    }
}
