package org.kitweft.sound.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SamplesTest {
    private static int sample(byte[] bytes, int index) {
        return (bytes[2 * index] & 0xFF) | (bytes[2 * index + 1] << 8);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, -0.5, 0.8})
    void whatIsNotTooLoudPassesAsItIs(double sample) {
        assertThat(Samples.bent(sample)).isEqualTo(sample);
    }

    @Test
    void nothingIsLouderThanFullScaleAndLouderStaysLouder() {
        double before = 0;
        for (double sample = 0; sample < 3; sample += 0.01) {
            double bent = Samples.bent(sample);
            assertThat(bent).isLessThanOrEqualTo(1).isGreaterThanOrEqualTo(before);
            assertThat(Samples.bent(-sample)).isEqualTo(-bent);
            before = bent;
        }
    }

    @Test
    void aChangeOfLevelGlides() {
        float[] loud = new float[200];
        Arrays.fill(loud, 0.5f);
        Samples samples = new Samples();
        byte[] rising = samples.bytes(loud, 100, 1);
        for (int i = 2; i < 200; i++) {
            assertThat(sample(rising, i) - sample(rising, i - 2)).isBetween(0, 200);
        }
        assertThat(sample(samples.bytes(loud, 100, 1), 0)).isEqualTo(16_384);
    }
}
