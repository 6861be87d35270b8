package org.kitweft.sound.bank.render;

/** Exponential decay, given as the time of 60 dB. */
public final class Decay {
    /** ln(1000): 60 dB as a power of e. */
    private static final double LN_60_DB = 6.907755278982137;

    private Decay() {}

    /** Factor from one sample to the next for a fall of 60 dB in {@code seconds}. */
    public static double perSample(double seconds, int rate) {
        return StrictMath.exp(-LN_60_DB / (seconds * rate));
    }

    /** Level left after {@code time} of a decay of 60 dB in {@code seconds}. */
    public static double after(double time, double seconds) {
        return StrictMath.exp(-LN_60_DB * time / seconds);
    }
}
