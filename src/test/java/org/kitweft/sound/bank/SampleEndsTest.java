package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.sound.bank.soundfont.Sample;

/** Every sample of the bank, as it is stored. */
class SampleEndsTest {
    /** One step of 16 bit is 3e-5; a click becomes audible from some 60 dB under full scale. */
    private static final double INAUDIBLE = 0.001;

    static Stream<Sample> samples() {
        return TestBank.values().samples().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void startsAndEndsNearSilenceAndIsCentred(Sample sample) {
        double[] wave = sample.toDoubles();
        assertThat(Math.abs(wave[0])).as("first frame of " + sample.name()).isLessThan(INAUDIBLE);
        if (!sample.loops()) {
            for (int i = wave.length - 4; i < wave.length; i++) {
                assertThat(Math.abs(wave[i])).as("frame " + i).isLessThan(INAUDIBLE);
            }
        }
        double sum = 0;
        double peak = 0;
        for (double frame : wave) {
            sum += frame;
            peak = Math.max(peak, Math.abs(frame));
        }
        assertThat(Math.abs(sum / wave.length)).as("direct current").isLessThan(0.003);
        assertThat(peak).as("peak").isBetween(0.02, 0.95);
    }

    /** From the loop's last frame to its first the wave goes on as it did one loop earlier. */
    @ParameterizedTest
    @MethodSource("samples")
    void loopsCloseWithoutAStep(Sample sample) {
        if (sample.loops()) {
            double[] wave = sample.toDoubles();
            double peak = 0;
            for (double frame : wave) {
                peak = Math.max(peak, Math.abs(frame));
            }
            for (int i = 0; i < 8; i++) {
                double goesOn = wave[sample.loopEnd() + i - 4];
                double again = wave[sample.loopStart() + i - 4];
                assertThat(Math.abs(goesOn - again)).as(sample.name()).isLessThan(0.01 * peak);
            }
        }
    }
}
