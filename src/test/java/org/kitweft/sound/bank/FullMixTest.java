package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FullMixTest {
    /**
     * Crash, ride, kick, snare and open hi-hat with bass, four chord notes and three horns, all at
     * velocity 127, at the default channel volume, without the synthesizer's limiter: full scale is
     * 1.
     */
    @Test
    void everythingAtOnceStaysUnderFullScale() {
        Played all = new Played().program(0, 33).program(1, 4).program(2, 61);
        for (int beat = 0; beat < 4; beat++) {
            double at = 0.01 + beat * 0.4;
            for (int key : new int[] {49, 51, 36, 38, 46}) {
                all.strike(at, key, 127);
            }
            all.note(at, 0.35, 0, 36, 127);
            for (int key : new int[] {60, 64, 67, 71}) {
                all.note(at, 0.35, 1, key, 127);
            }
            for (int key : new int[] {67, 71, 74}) {
                all.note(at, 0.35, 2, key, 127);
            }
        }
        double peak = 0;
        for (double[] channel : all.render(TestBank.loaded(), 2)) {
            for (double sample : channel) {
                peak = Math.max(peak, Math.abs(sample));
            }
        }
        assertThat(peak).isBetween(0.3, 0.98);
    }
}
