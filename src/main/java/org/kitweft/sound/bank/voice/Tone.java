package org.kitweft.sound.bank.voice;

import java.util.function.DoubleUnaryOperator;
import org.kitweft.sound.bank.render.Biquad;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * A tone of moving pitch, for what is blown, rubbed or electronic: harmonics under two functions of
 * time, with breath noise around the pitch.
 *
 * @param seconds rendered
 * @param pitch Hz at a time in seconds
 * @param level linear at a time in seconds
 * @param harmonics how many
 * @param fall power of 1/n by which harmonics weaken at the hardest stroke; softer strokes are
 *     duller
 * @param breath level of the noise against the tone
 */
public record Tone(
        double seconds,
        DoubleUnaryOperator pitch,
        DoubleUnaryOperator level,
        int harmonics,
        double fall,
        double breath)
        implements Voice {
    @Override
    public Wave render(double strength, Noise noise) {
        Wave wave = new Wave(RATE, seconds);
        double[] samples = wave.samples();
        double[] weights = weights(strength);
        Wave air = noise.white(RATE, seconds);
        air.filter(Biquad.bandPass(RATE, pitch.applyAsDouble(seconds / 2), 1.2));
        double blown = breath * 3 * (0.3 + 0.7 * strength);
        double phase = 0;
        for (int i = 0; i < samples.length; i++) {
            double time = (double) i / RATE;
            double hertz = pitch.applyAsDouble(time);
            phase += 2 * Math.PI * hertz / RATE;
            double sum = blown * air.samples()[i];
            for (int n = 1; n <= weights.length && n * hertz < 0.45 * RATE; n++) {
                sum += weights[n - 1] * StrictMath.sin(n * phase);
            }
            samples[i] = sum * level.applyAsDouble(time);
        }
        return wave;
    }

    private double[] weights(double strength) {
        double[] weights = new double[harmonics];
        for (int n = 1; n <= harmonics; n++) {
            weights[n - 1] = StrictMath.pow(n, -(fall + 0.9 * (1 - strength)));
        }
        return weights;
    }
}
