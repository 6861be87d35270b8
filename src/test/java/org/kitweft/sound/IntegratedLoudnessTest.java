package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Against ITU-R BS.1770-4 itself. Beside it, ffmpeg 5.1.9 (filter ebur128, one decimal) and this
 * class agreed within 0.1 LU on all parts of four of the styles that {@link MixLevelsTest}
 * measures.
 */
class IntegratedLoudnessTest {
    private static final int RATE = 44_100;

    private static double[] sine(double hertz, double decibels, double seconds) {
        double[] sine = new double[(int) (seconds * RATE)];
        for (int i = 0; i < sine.length; i++) {
            sine[i] = Math.pow(10, decibels / 20) * Math.sin(2 * Math.PI * hertz * i / RATE);
        }
        return sine;
    }

    /** BS.1770-4, annex 1: a 0 dB FS 997 Hz sine in the left channel alone reads -3.01 LKFS. */
    @Test
    void aFullScaleSineInOneChannelReadsWhatTheStandardSays() {
        assertThat(IntegratedLoudness.of(RATE, sine(997, 0, 5), new double[5 * RATE]))
                .isCloseTo(-3.01, within(0.05));
    }

    /** Signal 3 of EBU Tech 3341: 36 dB below, then 23 dB below, and again: the gate leaves -23. */
    @Test
    void whatIsMuchSofterThanTheRestIsLeftOut() {
        double[] soft = sine(1000, -36, 10);
        double[] loud = sine(1000, -23, 60);
        double[] all = new double[2 * soft.length + loud.length];
        System.arraycopy(soft, 0, all, 0, soft.length);
        System.arraycopy(loud, 0, all, soft.length, loud.length);
        System.arraycopy(soft, 0, all, soft.length + loud.length, soft.length);
        assertThat(IntegratedLoudness.of(RATE, all, all)).isCloseTo(-23, within(0.1));
    }

    @Test
    void silenceIsNoNumber() {
        assertThat(IntegratedLoudness.of(RATE, new double[RATE])).isNegative().isInfinite();
    }
}
