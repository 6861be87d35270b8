package org.kitweft.sound.bank.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TwoHeadsTest {
    @Test
    void withoutAirTheHeadsKeepTheirOwnFrequencies() {
        TwoHeads apart = TwoHeads.joined(182, 240, 0);
        assertThat(apart.together()).isCloseTo(182, within(1e-9));
        assertThat(apart.against()).isCloseTo(240, within(1e-9));
    }

    /**
     * Two equal masses on equal springs, joined by a third: the spring between acts only when they
     * move apart.
     */
    @Test
    void equalHeadsKeepTheLowModeAndStiffenTheHighOne() {
        TwoHeads pair = TwoHeads.joined(100, 100, 60);
        assertThat(pair.together()).isCloseTo(100, within(1e-9));
        assertThat(pair.against()).isCloseTo(Math.sqrt(100 * 100 + 2 * 60 * 60), within(1e-9));
    }
}
