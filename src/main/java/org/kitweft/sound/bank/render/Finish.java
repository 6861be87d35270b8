package org.kitweft.sound.bank.render;

import java.util.Arrays;

/**
 * Turns a raw wave into 16-bit samples: no direct current, a stated loudness, rounded peaks, and an
 * end that dies away to 0.
 */
public final class Finish {
    /** What lies lower than this under the peak is cut from the end, dB. */
    private static final double FLOOR = -66;

    /** Peaks are bent from here on, and never pass {@link #CEILING}. */
    private static final double KNEE = 0.6;

    private static final double CEILING = 0.94;

    /** Frames of rise: a quarter of a millisecond. */
    private static final int RISE = 11;

    private Finish() {}

    /**
     * A wave that ends: brought to {@code loudness} LUFS, trimmed and faded.
     *
     * @param earlier dB by which the trim comes earlier than 66 dB under the peak, for a wave that
     *     will be played softly
     */
    public static short[] ending(Wave wave, double loudness, double earlier) {
        wave.filter(Biquad.highPass(wave.rate(), 18, 0.7));
        level(wave, loudness);
        int audible = audible(wave, earlier);
        Wave trimmed = new Wave(wave.rate(), Arrays.copyOf(wave.samples(), audible));
        double lasting = (double) audible / wave.rate();
        // What ended by itself needs little; what is cut off while it rings must seem to die.
        boolean ended = audible < wave.length();
        trimmed.fadeOut(ended ? 0.06 * lasting : Math.min(0.35 * lasting, 1.0));
        rise(trimmed.samples());
        return quantised(trimmed);
    }

    /** A wave that goes on in a loop: brought to {@code loudness} LUFS, otherwise left as it is. */
    public static short[] looping(Wave wave, double loudness) {
        level(wave, loudness);
        return quantised(wave);
    }

    private static void level(Wave wave, double loudness) {
        // Bending peaks takes loudness away; a second pass makes up for most of it.
        for (int pass = 0; pass < 2; pass++) {
            wave.gain(StrictMath.pow(10, (loudness - Loudness.of(wave)) / 20));
            bend(wave.samples());
        }
    }

    private static void bend(double[] samples) {
        double room = CEILING - KNEE;
        for (int i = 0; i < samples.length; i++) {
            double over = Math.abs(samples[i]) - KNEE;
            if (over > 0) {
                double bent = KNEE + room * StrictMath.tanh(over / room);
                samples[i] = Math.copySign(bent, samples[i]);
            }
        }
    }

    private static int audible(Wave wave, double earlier) {
        double floor = wave.peak() * StrictMath.pow(10, (FLOOR + earlier) / 20);
        int end = wave.length();
        while (end > 64 && Math.abs(wave.samples()[end - 1]) < floor) {
            end--;
        }
        return end;
    }

    /** The first frames rise along a raised cosine, so that no sound starts with a step. */
    private static void rise(double[] samples) {
        for (int i = 0; i < RISE; i++) {
            samples[i] *= 0.5 - 0.5 * StrictMath.cos(Math.PI * i / RISE);
        }
    }

    private static short[] quantised(Wave wave) {
        short[] pcm = new short[wave.length()];
        for (int i = 0; i < pcm.length; i++) {
            pcm[i] = (short) Math.round(wave.samples()[i] * 32767);
        }
        return pcm;
    }
}
