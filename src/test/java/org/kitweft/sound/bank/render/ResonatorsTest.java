package org.kitweft.sound.bank.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.sound.bank.physics.Mode;

class ResonatorsTest {
    private static final int RATE = 44_100;

    /**
     * The recursion against the decaying sines themselves, seven modes, so that one group of four
     * is not full.
     */
    @Test
    void theRecursionGivesDecayingSines() {
        List<Mode> modes = new ArrayList<>();
        for (int i = 1; i <= 7; i++) {
            modes.add(new Mode(110.7 * i * i, 1.0 / i, 0.2 + 0.1 * i));
        }
        Wave wave = new Wave(RATE, 0.3);
        Resonators.add(wave, modes);
        for (int n = 0; n < wave.length(); n++) {
            double t = (double) n / RATE;
            double expected = 0;
            for (Mode mode : modes) {
                expected +=
                        mode.amplitude()
                                * Math.pow(10, -3 * t / mode.decay())
                                * Math.sin(2 * Math.PI * mode.frequency() * t);
            }
            assertThat(wave.samples()[n]).isCloseTo(expected, within(2e-4));
        }
    }

    @Test
    void aGlideOfNothingIsThePlainSum() {
        List<Mode> modes = List.of(new Mode(200, 1, 0.5), new Mode(433, 0.5, 0.3));
        Wave plain = new Wave(RATE, 0.2);
        Wave glided = new Wave(RATE, 0.2);
        Resonators.add(plain, modes);
        new Glide(0.011, 1e-9).add(glided, modes);
        assertThat(glided.samples()).containsExactly(plain.samples(), within(1e-3));
    }

    @Test
    void modesAboveTheBandAreLeftOut() {
        Wave wave = new Wave(RATE, 0.01);
        Resonators.add(wave, List.of(new Mode(22_000, 1, 1)));
        assertThat(wave.peak()).isZero();
    }
}
