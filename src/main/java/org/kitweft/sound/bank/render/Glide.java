package org.kitweft.sound.bank.render;

import java.util.List;
import org.kitweft.sound.bank.physics.Mode;

/**
 * Modes whose pitch settles: a hard stroke stretches the head, so all its frequencies start high
 * and fall.
 *
 * @param semitones how much higher they start; 0 for none, below 0 for lower
 * @param seconds time in which the excess falls to 37 %
 */
public record Glide(double semitones, double seconds) {
    /** Frequencies are renewed every so many samples. */
    private static final int BLOCK = 16;

    /** No change of pitch. */
    public static final Glide NONE = new Glide(0, 0.05);

    public Glide {
        if (!(seconds > 0)) {
            throw new IllegalArgumentException("a glide settles in more than 0 s, not " + seconds);
        }
    }

    /** Factor on all frequencies, {@code time} seconds after the strike. */
    public double factor(double time) {
        return StrictMath.pow(2, semitones / 12 * StrictMath.exp(-time / seconds));
    }

    /** Adds {@code modes} to {@code out}, gliding, from the first sample on. */
    public void add(Wave out, List<Mode> modes) {
        if (Math.abs(semitones) < 0.01) {
            Resonators.add(out, modes);
            return;
        }
        double[] factors = new double[out.length() / BLOCK + 1];
        for (int b = 0; b < factors.length; b++) {
            factors[b] = factor((b + 0.5) * BLOCK / out.rate());
        }
        for (Mode mode : modes) {
            if (mode.frequency() * factors[0] < 0.48 * out.rate() && mode.amplitude() != 0) {
                rotate(out, mode, factors);
            }
        }
    }

    private static void rotate(Wave out, Mode mode, double[] factors) {
        double[] samples = out.samples();
        double fall = Decay.perSample(mode.decay(), out.rate());
        double angle = 2 * Math.PI * mode.frequency() / out.rate();
        double x = mode.amplitude();
        double y = 0;
        double floor = Math.abs(x) * 1.5e-5;
        for (int b = 0; b * BLOCK < samples.length && StrictMath.hypot(x, y) > floor; b++) {
            double cos = fall * StrictMath.cos(angle * factors[b]);
            double sin = fall * StrictMath.sin(angle * factors[b]);
            int end = Math.min(samples.length, (b + 1) * BLOCK);
            for (int i = b * BLOCK; i < end; i++) {
                samples[i] += y;
                double turned = cos * x - sin * y;
                y = sin * x + cos * y;
                x = turned;
            }
        }
    }
}
