package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.sound.bank.percussion.Percussion;
import org.kitweft.sound.bank.percussion.PercussionSound;
import org.kitweft.sound.bank.render.Loudness;
import org.kitweft.sound.bank.render.Wave;

/** Soft, plain and hard strokes (velocities 40, 80, 115), as the JDK's synthesizer plays them. */
class DynamicsTest {
    /**
     * The synthesizer's default: gain goes with the square of velocity, so 80 is 12.0 dB over 40
     * and 115 6.3 dB over 80.
     */
    private static final double LEAST_STEP_DB = 5;

    /** Each sound lies within this of the level its table states, at velocity 115. */
    private static final double WINDOW_DB = 1;

    /**
     * Loudness of a percussion sound of 0 dB: &minus;26 LUFS in the bank, 1.7 dB less at velocity
     * 115, 4.2 dB less at the default channel volume of 100 (SoftSynthesizer's own gain law: both
     * go with the square).
     */
    private static final double COMMON_LUFS = -31.9;

    static IntStream percussion() {
        return IntStream.rangeClosed(27, 87);
    }

    static Stream<Arguments> pitched() {
        return Stream.of(
                        "4 41 60 79",
                        "9 72 84 96",
                        "11 53 65 77 89",
                        "12 48 60 72 84 96",
                        "13 60 72 84 96",
                        "32 28 40 52",
                        "33 28 40 52",
                        "47 41 45 48 53",
                        "60 48 60 72",
                        "61 48 60 72",
                        "116 36 48 60",
                        "117 36 43 50")
                .flatMap(
                        row -> {
                            String[] numbers = row.split(" ");
                            return Stream.of(numbers)
                                    .skip(1)
                                    .map(
                                            k ->
                                                    Arguments.of(
                                                            Integer.valueOf(numbers[0]),
                                                            Integer.valueOf(k)));
                        });
    }

    @ParameterizedTest
    @MethodSource("percussion")
    void percussionRisesInLevelAndBrightness(int key) {
        rises(heard(key, 40), heard(key, 80), heard(key, 115));
    }

    @ParameterizedTest(name = "program {0}, key {1}")
    @MethodSource("pitched")
    void pitchedSoundsRiseInLevelAndBrightness(int program, int key) {
        rises(heard(program, key, 40), heard(program, key, 80), heard(program, key, 115));
    }

    @Test
    void percussionIsBalancedAsItsTableStates() {
        SoftAssertions all = new SoftAssertions();
        for (PercussionSound sound : Percussion.all()) {
            double[][] both =
                    new Played().strike(0.001, sound.key(), 115).render(TestBank.loaded(), 0.4);
            double stated = COMMON_LUFS + sound.level();
            all.assertThat(loudness(both)).as(sound.name()).isCloseTo(stated, within(WINDOW_DB));
        }
        all.assertAll();
    }

    /** By ear: a kit's main drums lie above small things, and nothing is lost. */
    @Test
    void noPercussionSoundIsMoreThanEightDecibelsFromAnother() {
        double[] levels =
                Percussion.all().stream().mapToDouble(PercussionSound::level).sorted().toArray();
        assertThat(levels[levels.length - 1] - levels[0]).isLessThanOrEqualTo(8);
    }

    /** BS.1770: powers of left and right added. */
    private static double loudness(double[][] both) {
        double sum = 0;
        for (double[] channel : both) {
            sum += Math.pow(10, Loudness.of(new Wave(44_100, channel)) / 10);
        }
        return 10 * Math.log10(sum);
    }

    private static void rises(Wave soft, Wave plain, Wave hard) {
        assertThat(Loudness.of(plain)).isGreaterThan(Loudness.of(soft) + LEAST_STEP_DB);
        assertThat(Loudness.of(hard)).isGreaterThan(Loudness.of(plain) + LEAST_STEP_DB);
        assertThat(brightness(plain)).isGreaterThan(1.01 * brightness(soft));
        assertThat(brightness(hard)).isGreaterThan(1.01 * brightness(plain));
    }

    /** Spectral centroid of the first 100 ms, where stick and mallet are heard. */
    private static double brightness(Wave wave) {
        return Spectrum.of(wave.samples(), wave.rate(), 0, wave.rate() / 10, 8192).centroid();
    }

    private static Wave heard(int key, int velocity) {
        return new Played().strike(0.001, key, velocity).mono(TestBank.loaded(), 0.4);
    }

    private static Wave heard(int program, int key, int velocity) {
        return new Played()
                .program(0, program)
                .note(0.001, 0.4, 0, key, velocity)
                .mono(TestBank.loaded(), 0.4);
    }
}
