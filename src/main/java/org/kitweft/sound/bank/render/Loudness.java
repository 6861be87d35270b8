package org.kitweft.sound.bank.render;

/**
 * Loudness of a wave's start as people hear it: K-weighted mean square over 400 ms, the momentary
 * window of ITU-R BS.1770-4 (2015) and EBU Tech 3341. One channel, ungated.
 *
 * <p>The standard prints its two filters for 48 kHz only; here they are designed anew for any rate
 * from the analogue values that reproduce those coefficients.
 */
public final class Loudness {
    /** Seconds measured. */
    public static final double WINDOW = 0.4;

    private Loudness() {}

    /** Loudness in LUFS of the first 400 ms (silence after a shorter wave's end counts). */
    public static double of(Wave wave) {
        int window = (int) Math.round(WINDOW * wave.rate());
        double[] start = new double[window];
        System.arraycopy(wave.samples(), 0, start, 0, Math.min(window, wave.length()));
        Biquad.kWeightingShelf(wave.rate()).run(start);
        Biquad.highPass(wave.rate(), 38.135, 0.5003).run(start);
        double sum = 0;
        for (double sample : start) {
            sum += sample * sample;
        }
        return -0.691 + 10 * StrictMath.log10(sum / window + 1e-12);
    }
}
