package org.kitweft.sound.bank;

import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Power over frequency of a stretch of samples: Hann window, zeros up to a power of two, Commons
 * Math's FFT.
 */
final class Spectrum {
    private final double[] power;
    private final double step;

    private Spectrum(double[] power, double step) {
        this.power = power;
        this.step = step;
    }

    /** Samples {@code from} up to {@code to}, in a transform of at least {@code size} points. */
    static Spectrum of(double[] samples, int rate, int from, int to, int size) {
        int end = Math.min(to, samples.length);
        int count = Math.max(end - from, 1);
        int points = Math.max(Integer.highestOneBit(Math.max(size, count) - 1) * 2, 16);
        double[] windowed = new double[points];
        for (int i = from; i < end; i++) {
            double hann = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i - from + 0.5) / count);
            windowed[i - from] = samples[i] * hann;
        }
        Complex[] bins =
                new FastFourierTransformer(DftNormalization.STANDARD)
                        .transform(windowed, TransformType.FORWARD);
        double[] power = new double[points / 2];
        for (int k = 0; k < power.length; k++) {
            power[k] =
                    bins[k].getReal() * bins[k].getReal()
                            + bins[k].getImaginary() * bins[k].getImaginary();
        }
        return new Spectrum(power, (double) rate / points);
    }

    /** The spectral centroid: the frequency around which amplitude is balanced, Hz. */
    double centroid() {
        double sum = 0;
        double weighted = 0;
        for (int k = 0; k < power.length; k++) {
            double amplitude = Math.sqrt(power[k]);
            sum += amplitude;
            weighted += amplitude * k * step;
        }
        return weighted / sum;
    }

    /** Power between two frequencies. */
    double between(double low, double high) {
        double sum = 0;
        for (int k = (int) Math.ceil(low / step); k < Math.min(power.length, high / step); k++) {
            sum += power[k];
        }
        return sum;
    }

    /**
     * The strongest frequency between two, its peak refined by a parabola through the logarithms.
     */
    double peak(double low, double high) {
        int best = (int) Math.ceil(low / step);
        for (int k = best; k <= high / step; k++) {
            best = power[k] > power[best] ? k : best;
        }
        double a = Math.log(power[best - 1]);
        double b = Math.log(power[best]);
        double c = Math.log(power[best + 1]);
        return (best + 0.5 * (a - c) / (a - 2 * b + c)) * step;
    }
}
