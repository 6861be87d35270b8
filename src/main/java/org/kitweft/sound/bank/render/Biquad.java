package org.kitweft.sound.bank.render;

/**
 * A filter with two poles and two zeros. Formulas: R. Bristow-Johnson's "Audio EQ Cookbook",
 * published as a W3C Working Group Note (2021).
 */
public final class Biquad {
    private final double b0;
    private final double b1;
    private final double b2;
    private final double a1;
    private final double a2;

    private Biquad(double b0, double b1, double b2, double a0, double a1, double a2) {
        this.b0 = b0 / a0;
        this.b1 = b1 / a0;
        this.b2 = b2 / a0;
        this.a1 = a1 / a0;
        this.a2 = a2 / a0;
    }

    /** Lets low frequencies pass. */
    public static Biquad lowPass(double rate, double hertz, double q) {
        double w = angle(rate, hertz);
        double cos = StrictMath.cos(w);
        double alpha = StrictMath.sin(w) / (2 * q);
        double b = (1 - cos) / 2;
        return new Biquad(b, 2 * b, b, 1 + alpha, -2 * cos, 1 - alpha);
    }

    /** Lets high frequencies pass. */
    public static Biquad highPass(double rate, double hertz, double q) {
        double w = angle(rate, hertz);
        double cos = StrictMath.cos(w);
        double alpha = StrictMath.sin(w) / (2 * q);
        double b = (1 + cos) / 2;
        return new Biquad(b, -2 * b, b, 1 + alpha, -2 * cos, 1 - alpha);
    }

    /** Lets a band pass, gain 1 at its middle. */
    public static Biquad bandPass(double rate, double hertz, double q) {
        double w = angle(rate, hertz);
        double alpha = StrictMath.sin(w) / (2 * q);
        return new Biquad(alpha, 0, -alpha, 1 + alpha, -2 * StrictMath.cos(w), 1 - alpha);
    }

    /**
     * The first stage of K-weighting, a rise of 4 dB above some 2 kHz: ITU-R BS.1770-4, whose table
     * for 48 kHz comes out of these analogue values (found by fitting, and checked against that
     * table in the tests).
     */
    public static Biquad kWeightingShelf(double rate) {
        double k = StrictMath.tan(Math.PI * 1681.974450955533 / rate);
        double q = k / 0.7071752369554196;
        double high = StrictMath.pow(10, 3.999843853973347 / 20);
        double middle = StrictMath.pow(high, 0.4996667741545416) * q;
        return new Biquad(
                high + middle + k * k,
                2 * (k * k - high),
                high - middle + k * k,
                1 + q + k * k,
                2 * (k * k - 1),
                1 - q + k * k);
    }

    /** Filters in place, from rest. */
    public void run(double[] samples) {
        double s1 = 0;
        double s2 = 0;
        for (int i = 0; i < samples.length; i++) {
            double in = samples[i];
            double out = b0 * in + s1;
            s1 = b1 * in - a1 * out + s2;
            s2 = b2 * in - a2 * out;
            samples[i] = out;
        }
    }

    /** Above 0.49 of the rate a filter makes no sense: held there. */
    private static double angle(double rate, double hertz) {
        return 2 * Math.PI * Math.min(hertz / rate, 0.49);
    }
}
