package org.kitweft.sound.bank.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoudnessTest {
    /**
     * ITU-R BS.1770-4, annex 1: a 0 dB FS sine of 997 Hz in one channel reads &minus;3.01 LKFS. The
     * rows at other frequencies are the gains of the filter coefficients that the standard prints
     * for 48 kHz (coefficients from memory, gains recomputed with NumPy).
     */
    @ParameterizedTest(name = "{1} Hz at {0}")
    @CsvSource({
        "48000, 997, -3.01",
        "44100, 997, -3.01",
        "22050, 997, -3.01",
        "16000, 997, -3.01",
        "48000, 50, -7.64",
        "48000, 100, -4.83",
        "48000, 200, -3.97",
        "48000, 2000, -0.63",
        "48000, 5000, 0.31",
        "48000, 10000, 0.34"
    })
    void aFullScaleSineReadsAsTheStandardSays(int rate, double hertz, double expected) {
        Wave sine = new Wave(rate, 0.4);
        for (int i = 0; i < sine.length(); i++) {
            sine.samples()[i] = Math.sin(2 * Math.PI * hertz * i / rate);
        }
        assertThat(Loudness.of(sine)).isCloseTo(expected, within(0.15));
    }
}
