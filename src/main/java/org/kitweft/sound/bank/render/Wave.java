package org.kitweft.sound.bank.render;

/**
 * A mono wave in the making: samples as doubles, nominally &minus;1 to 1, at a rate. Grown in place
 * by its builder.
 */
public final class Wave {
    private final int rate;
    private final double[] samples;

    /** Silence of {@code seconds} at {@code rate} samples a second. */
    public Wave(int rate, double seconds) {
        this(rate, new double[(int) Math.ceil(rate * seconds)]);
    }

    /** Takes over {@code samples}; the caller hands them on. */
    public Wave(int rate, double[] samples) {
        this.rate = rate;
        this.samples = samples;
    }

    public int rate() {
        return rate;
    }

    public int length() {
        return samples.length;
    }

    /** The samples themselves, not a copy: renderers write into them. */
    public double[] samples() {
        return samples;
    }

    /**
     * Adds {@code other} times {@code gain}, starting at {@code seconds}; what hangs over is
     * dropped.
     */
    public Wave add(Wave other, double gain, double seconds) {
        int from = (int) Math.round(seconds * rate);
        int count = Math.min(other.samples.length, samples.length - from);
        for (int i = 0; i < count; i++) {
            samples[from + i] += gain * other.samples[i];
        }
        return this;
    }

    /** Multiplies every sample. */
    public Wave gain(double factor) {
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= factor;
        }
        return this;
    }

    /** Runs the wave through a filter. */
    public Wave filter(Biquad filter) {
        filter.run(samples);
        return this;
    }

    /** Largest distance from 0. */
    public double peak() {
        double peak = 0;
        for (double sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return peak;
    }

    /** Scales to a peak of {@code peak}; silence stays silence. */
    public Wave toPeak(double peak) {
        double now = peak();
        return now > 0 ? gain(peak / now) : this;
    }

    /** Lets the last {@code seconds} die away along a raised cosine, to exactly 0. */
    public Wave fadeOut(double seconds) {
        int count = Math.min(samples.length, (int) Math.round(seconds * rate));
        for (int i = 0; i < count; i++) {
            double left = (double) (count - 1 - i) / count;
            samples[samples.length - count + i] *= 0.5 - 0.5 * StrictMath.cos(Math.PI * left);
        }
        return this;
    }
}
