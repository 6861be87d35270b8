package org.kitweft.sound.bank.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContactTest {
    private static final Contact STICK = Contact.ofMillis(2, 0.3);

    /**
     * Against the integral of half a sine times cos(2 pi f t) about its middle, by the trapezoid
     * rule.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 50, 200, 249.99999, 250, 400, 499})
    void agreesWithTheIntegralOfHalfASine(double hertz) {
        int steps = 20_000;
        double sum = 0;
        for (int i = 1; i < steps; i++) {
            double t = (double) i / steps - 0.5;
            sum += Math.cos(Math.PI * t) * Math.cos(2 * Math.PI * hertz * 0.002 * t);
        }
        assertThat(STICK.spectrum(hertz, 1)).isCloseTo(sum / steps * Math.PI / 2, within(1e-6));
    }

    @Test
    void neverRisesWithFrequencyAndFallsWithSoftness() {
        double before = 1;
        for (int hertz = 10; hertz < 20_000; hertz += 10) {
            double now = STICK.spectrum(hertz, 1);
            assertThat(now).isLessThanOrEqualTo(before);
            assertThat(STICK.spectrum(hertz, 0.4)).isLessThan(now);
            before = now;
        }
    }

    @Test
    void refusesNoTimeAtAll() {
        assertThatThrownBy(() -> new Contact(0, 0.3)).hasMessageContaining("more than 0 s");
    }
}
