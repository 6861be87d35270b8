package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.media.sound.EmergencySoundbank;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.Soundbank;
import org.junit.jupiter.api.Test;
import org.kitweft.sound.bank.render.Wave;

/**
 * All General MIDI percussion sounds differ from one another, as heard through the JDK's
 * synthesizer.
 *
 * <p>The distance of two sounds: each is cut into three stretches (0 to 40, 40 to 150, 150 to 500
 * ms) and 30 bands of a third of an octave from 25 Hz; levels in dB against the sound's loudest
 * cell, held at &minus;50 dB; the distance is the mean difference over all cells. 1 dB is the step
 * in level that listeners notice (Zwicker and Fastl, <i>Psychoacoustics</i>, ch. 7, from memory);
 * the threshold asks for it on the mean over all cells, silent ones counted.
 */
class PercussionDistanceTest {
    private static final double THRESHOLD_DB = 1.5;
    private static final double[] CUTS = {0, 0.04, 0.15, 0.5};
    private static final int BANDS = 30;
    private static final double FLOOR_DB = -50;

    @Test
    void allFortySevenSoundsOfGeneralMidiOneDiffer() {
        assertThat(tooNear(TestBank.loaded(), 35, 81)).isEmpty();
    }

    @Test
    void soDoThoseThatGeneralMidiTwoAdds() {
        assertThat(tooNear(TestBank.loaded(), 27, 87)).isEmpty();
    }

    /**
     * The same test, on the bank that the JDK falls back to: this is why there is a bank of our
     * own.
     */
    @Test
    void theFallbackBankOfTheJdkFails() throws Exception {
        assertThat(tooNear(EmergencySoundbank.createSoundbank(), 35, 81)).hasSizeGreaterThan(20);
    }

    private static List<String> tooNear(Soundbank bank, int from, int to) {
        List<double[]> sounds = new ArrayList<>();
        for (int key = from; key <= to; key++) {
            sounds.add(cells(new Played().strike(0.001, key, 110).mono(bank, 0.55)));
        }
        List<String> found = new ArrayList<>();
        for (int a = 0; a < sounds.size(); a++) {
            for (int b = a + 1; b < sounds.size(); b++) {
                double distance = distance(sounds.get(a), sounds.get(b));
                if (distance < THRESHOLD_DB) {
                    found.add("%d and %d: %.2f dB".formatted(from + a, from + b, distance));
                }
            }
        }
        return found;
    }

    private static double distance(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += Math.abs(a[i] - b[i]);
        }
        return sum / a.length;
    }

    private static double[] cells(Wave wave) {
        double[] cells = new double[(CUTS.length - 1) * BANDS];
        double loudest = 1e-12;
        for (int c = 0; c + 1 < CUTS.length; c++) {
            int from = (int) (CUTS[c] * wave.rate());
            int to = (int) (CUTS[c + 1] * wave.rate());
            Spectrum spectrum = Spectrum.of(wave.samples(), wave.rate(), from, to, 4096);
            for (int b = 0; b < BANDS; b++) {
                double low = 25 * Math.pow(2, b / 3.0);
                double power = spectrum.between(low, low * Math.cbrt(2)) / (to - from);
                cells[c * BANDS + b] = power;
                loudest = Math.max(loudest, power);
            }
        }
        for (int i = 0; i < cells.length; i++) {
            cells[i] = Math.max(FLOOR_DB, 10 * Math.log10(cells[i] / loudest + 1e-12));
        }
        return cells;
    }
}
