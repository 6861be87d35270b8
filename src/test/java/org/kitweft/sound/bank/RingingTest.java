package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import javax.sound.midi.Soundbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.sound.bank.pitched.Programs;
import org.kitweft.sound.bank.render.Wave;

/** What stops what, and what rings on, through the JDK's synthesizer. */
class RingingTest {
    /**
     * Pairs as General MIDI has them: hi-hat by RP-003 and RP-024; whistles, guiros, cuicas,
     * triangles by RP-024.
     */
    @ParameterizedTest(name = "{0} is stopped by {1}")
    @CsvSource({"46, 42", "46, 44", "72, 71", "74, 73", "79, 78", "81, 80", "87, 86", "30, 29"})
    void aSoundIsStoppedByItsPartner(int ringing, int stopper) {
        double at = ringing == 30 || ringing == 74 || ringing == 79 ? 0.05 : 0.15;
        Wave both =
                new Played().strike(0.001, ringing, 110).strike(at, stopper, 110).mono(bank(), 1.2);
        Wave alone = new Played().strike(at, stopper, 110).mono(bank(), 1.2);
        double[] rest = difference(both, alone);
        int choked = (int) ((at + 0.06) * both.rate());
        double before = power(rest, 0, (int) (at * both.rate()));
        assertThat(power(rest, choked, rest.length)).isLessThan(1e-5 * before);
    }

    @ParameterizedTest(name = "{0} rings on under {1}")
    @CsvSource({"51, 42", "49, 51", "53, 51", "49, 57", "63, 62", "46, 51", "46, 38"})
    void othersRingOn(int ringing, int other) {
        Wave both =
                new Played().strike(0.001, ringing, 110).strike(0.15, other, 110).mono(bank(), 0.5);
        Wave alone = new Played().strike(0.15, other, 110).mono(bank(), 0.5);
        Wave undisturbed = new Played().strike(0.001, ringing, 110).mono(bank(), 0.5);
        double[] rest = difference(both, alone);
        assertThat(power(rest, 9000, rest.length))
                .isGreaterThan(0.9 * power(undisturbed.samples(), 9000, rest.length));
    }

    /** Notes last 50 ms here. A second and a half later a crash is still there. */
    @ParameterizedTest
    @ValueSource(ints = {49, 57, 51, 59, 53, 81})
    void longSoundsRingAfterAShortNote(int key) {
        Wave wave = new Played().strike(0.001, key, 115).mono(bank(), 1.5);
        double start = power(wave.samples(), 0, 4410);
        double end = power(wave.samples(), wave.length() - 4410, wave.length());
        assertThat(10 * Math.log10(end / start)).isBetween(-55.0, -8.0);
    }

    @Test
    void theVibraphonesMotorRunsOnBankOneOnly() {
        assertThat(unevenness(0)).isLessThan(0.02);
        assertThat(unevenness(Programs.MOTOR_BANK)).isGreaterThan(0.1);
    }

    /** How far the level in 20 ms steps strays from a straight fall in dB, relative. */
    private static double unevenness(int bankSelect) {
        Wave wave =
                new Played()
                        .control(0, 0, 0, bankSelect)
                        .program(0, Programs.VIBRAPHONE_PROGRAM)
                        .note(0.01, 1.5, 0, 65, 100)
                        .mono(bank(), 1.5);
        int step = wave.rate() / 50;
        double[] levels = new double[50];
        for (int i = 0; i < levels.length; i++) {
            int from = wave.rate() / 2 + i * step;
            levels[i] = Math.log(power(wave.samples(), from, from + step)) / 2;
        }
        double slope = (levels[49] - levels[0]) / 49;
        double[] strays = new double[50];
        for (int i = 0; i < 50; i++) {
            strays[i] = levels[i] - slope * i;
        }
        double mean = Arrays.stream(strays).average().orElseThrow();
        return Math.sqrt(
                Arrays.stream(strays).map(s -> (s - mean) * (s - mean)).average().orElseThrow());
    }

    private static Soundbank bank() {
        return TestBank.loaded();
    }

    private static double[] difference(Wave a, Wave b) {
        double[] rest = a.samples().clone();
        for (int i = 0; i < rest.length; i++) {
            rest[i] -= b.samples()[i];
        }
        return rest;
    }

    /** Mean square. */
    private static double power(double[] samples, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += samples[i] * samples[i];
        }
        return sum / (to - from) + 1e-20;
    }
}
