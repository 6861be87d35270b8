package org.kitweft.sound.bank.render;

/**
 * White noise from a seed: the same seed gives the same noise on every machine. Generator:
 * Marsaglia, "Xorshift RNGs", <i>Journal of Statistical Software</i> 8 no. 14 (2003), scrambled by
 * a multiplication.
 */
public final class Noise {
    private long state;

    public Noise(long seed) {
        // Mixed, because neighbouring seeds must not give neighbouring noise, and 0 would stay 0.
        long mixed = (seed + 0x9E3779B97F4A7C15L) * 0xBF58476D1CE4E5B9L;
        state = (mixed ^ (mixed >>> 31)) | 1;
        for (int i = 0; i < 8; i++) {
            next();
        }
    }

    /** Evenly spread from &minus;1 to 1. */
    public double next() {
        state ^= state << 13;
        state ^= state >>> 7;
        state ^= state << 17;
        return (double) ((state * 0x2545F4914F6CDD1DL) >> 10) * 0x1.0p-53;
    }

    /** Evenly spread from {@code low} to {@code high}. */
    public double between(double low, double high) {
        return low + (high - low) * 0.5 * (next() + 1);
    }

    /** Roughly normal, variance 1: three even ones added. */
    public double bell() {
        return next() + next() + next();
    }

    /** A wave of white noise. */
    public Wave white(int rate, double seconds) {
        Wave wave = new Wave(rate, seconds);
        double[] samples = wave.samples();
        for (int i = 0; i < samples.length; i++) {
            samples[i] = next();
        }
        return wave;
    }
}
