package org.kitweft.sound.bank.render;

/**
 * Halves the rate of waves that hold next to nothing above a quarter of it, so that dark sounds
 * take half the space. The low-pass is a windowed sinc (Oppenheim and Schafer, <i>Discrete-Time
 * Signal Processing</i>, ch. 7, Blackman window).
 */
public final class Thrift {
    /** Taps on each side of the middle. */
    private static final int REACH = 32;

    /** Power that may be lost, against the whole: 44 dB lower. */
    private static final double LOST = 4e-5;

    /**
     * Power that may lie above a tenth of the rate: synthesizers that draw straight lines between
     * samples, as the JDK's does unless told otherwise, dull what lies there once the rate is
     * halved.
     */
    private static final double DULLED = 0.01;

    /** Passed part of the band: a little under a half, so that the filter has room to fall. */
    private static final double PASSED = 0.48;

    private static final double[] TAPS = taps();

    private Thrift() {}

    /**
     * {@code wave} at half the rate if that loses nothing to speak of, else {@code wave} itself.
     */
    public static Wave fit(Wave wave) {
        double whole = power(wave.samples());
        double lost = power(above(wave, 0.23));
        double dulled = power(above(wave, 0.1));
        return lost < LOST * whole && dulled < DULLED * whole ? halved(wave) : wave;
    }

    /** What lies above a part of the rate: a Butterworth filter of fourth order. */
    private static double[] above(Wave wave, double part) {
        double[] highs = wave.samples().clone();
        Biquad.highPass(wave.rate(), wave.rate() * part, 0.5412).run(highs);
        Biquad.highPass(wave.rate(), wave.rate() * part, 1.3066).run(highs);
        return highs;
    }

    private static double power(double[] samples) {
        double sum = 0;
        for (double sample : samples) {
            sum += sample * sample;
        }
        return sum;
    }

    private static Wave halved(Wave wave) {
        double[] from = wave.samples();
        double[] to = new double[from.length / 2];
        for (int i = 0; i < to.length; i++) {
            double sum = 0;
            int low = Math.max(-REACH, -2 * i);
            int high = Math.min(REACH, from.length - 1 - 2 * i);
            for (int k = low; k <= high; k++) {
                sum += TAPS[k + REACH] * from[2 * i + k];
            }
            to[i] = sum;
        }
        return new Wave(wave.rate() / 2, to);
    }

    private static double[] taps() {
        double[] taps = new double[2 * REACH + 1];
        for (int k = -REACH; k <= REACH; k++) {
            double x = Math.PI * k;
            double sinc = k == 0 ? PASSED : StrictMath.sin(PASSED * x) / x;
            double turn = x / (REACH + 1);
            double window = 0.42 + 0.5 * StrictMath.cos(turn) + 0.08 * StrictMath.cos(2 * turn);
            taps[k + REACH] = sinc * window;
        }
        return taps;
    }
}
