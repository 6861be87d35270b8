package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.sound.bank.soundfont.Sample;

/**
 * Mode frequencies measured by FFT on the bank's own 16-bit samples, against the published tables
 * in {@code shared/reference}: within 1 %, or inside the table's range where it gives one.
 */
class RenderedModesTest {
    /**
     * Single heads, whose lowest mode is not split by a second one; the soft layer, whose pitch
     * does not glide.
     */
    @ParameterizedTest(name = "{0}: mode ({2},{3})")
    @CsvSource({
        "60 Hi Bongo s, 415, 1, 1",
        "60 Hi Bongo s, 415, 2, 1",
        "60 Hi Bongo s, 415, 0, 2",
        "61 Low Bongo s, 297, 1, 1",
        "61 Low Bongo s, 297, 2, 1",
        "63 Open Hi Conga s, 233, 1, 1",
        "63 Open Hi Conga s, 233, 2, 1",
        "65 High Timbale s, 370, 1, 1",
        "65 High Timbale s, 370, 2, 1",
        "65 High Timbale s, 370, 3, 1",
        "65 High Timbale s, 370, 1, 2",
        "65 High Timbale s, 370, 4, 1",
        "66 Low Timbale s, 262, 1, 1",
        "66 Low Timbale s, 262, 2, 1",
        "66 Low Timbale s, 262, 3, 1"
    })
    void headsRingAtTheMembranesRatios(String sample, double fundamental, int m, int n) {
        double ratio =
                Reference.rows("membrane-modes.csv").stream()
                        .filter(row -> row.get("m").equals("" + m) && row.get("n").equals("" + n))
                        .mapToDouble(row -> Double.parseDouble(row.get("ratio")))
                        .findFirst()
                        .orElseThrow();
        Spectrum spectrum = spectrum(sample, 0.02, 0.3);
        double lowest = spectrum.peak(fundamental * 0.96, fundamental * 1.04);
        double measured = spectrum.peak(lowest * ratio * 0.97, lowest * ratio * 1.03);
        assertThat(measured / lowest).isCloseTo(ratio, within(0.01 * ratio));
    }

    @ParameterizedTest(name = "{0}: ({1},1)")
    @CsvSource({
        "Timpani 45 s, 2", "Timpani 45 s, 3", "Timpani 45 s, 4", "Timpani 45 s, 5",
        "Timpani 50 h, 2", "Timpani 50 h, 3", "Timpani 50 h, 4", "Timpani 50 h, 5"
    })
    void timpaniRingInsideThePublishedRanges(String sample, int mode) {
        double pitch = hertz(TestBank.sample(sample).rootKey());
        Spectrum spectrum = spectrum(sample, 0.4, 1.8);
        double first = spectrum.peak(pitch * 0.97, pitch * 1.03);
        assertThat(first).as("(1,1) is the pitch").isCloseTo(pitch, within(0.005 * pitch));
        inRange("timpani_preferred", mode, spectrum, first, 0.03);
    }

    @ParameterizedTest(name = "{0}: mode {2}")
    @CsvSource({
        "Marimba 44 h, marimba_bar, 2", "Marimba 44 h, marimba_bar, 3",
        "Marimba 62 h, marimba_bar, 2", "Marimba 62 h, marimba_bar, 3",
        "Vibraphone 54 h, vibraphone_bar, 2", "Vibraphone 54 h, vibraphone_bar, 3",
        "Vibraphone 66 h, vibraphone_bar, 2", "Vibraphone 66 h, vibraphone_bar, 3",
        "Xylophone 69 h, xylophone_bar, 2", "Xylophone 69 h, xylophone_bar, 3",
        "Glockenspiel 82 h, free_uniform_bar, 2", "Glockenspiel 82 h, free_uniform_bar, 3",
        "Glockenspiel 74 h, free_uniform_bar, 4"
    })
    void barsRingAtThePublishedRatios(String sample, String body, int mode) {
        double pitch = hertz(TestBank.sample(sample).rootKey());
        Spectrum spectrum = spectrum(sample, 0.01, 0.16);
        double first = spectrum.peak(pitch * 0.97, pitch * 1.03);
        assertThat(first).as("mode 1 is the pitch").isCloseTo(pitch, within(0.005 * pitch));
        inRange(body, mode, spectrum, first, 0.08);
    }

    private static void inRange(
            String body, int mode, Spectrum spectrum, double first, double search) {
        var row =
                Reference.rows("bar-modes.csv").stream()
                        .filter(r -> r.get("body").equals(body) && r.get("mode").equals("" + mode))
                        .findFirst()
                        .orElseThrow();
        double ratio = Double.parseDouble(row.get("ratio"));
        double measured =
                spectrum.peak(first * ratio * (1 - search), first * ratio * (1 + search)) / first;
        if (row.get("low").isEmpty()) {
            assertThat(measured).isCloseTo(ratio, within(0.01 * ratio));
        } else {
            // The FFT's own error, far below the 1 % asked for.
            double blur = 0.001 * ratio;
            assertThat(measured)
                    .isBetween(
                            Double.parseDouble(row.get("low")) - blur,
                            Double.parseDouble(row.get("high")) + blur);
        }
    }

    private static Spectrum spectrum(String name, double from, double to) {
        Sample sample = TestBank.sample(name);
        int rate = sample.rate();
        return Spectrum.of(
                sample.toDoubles(), rate, (int) (from * rate), (int) (to * rate), 1 << 16);
    }

    /** ISO 16: A4 = 440 Hz. */
    private static double hertz(int key) {
        return 440 * Math.pow(2, (key - 69) / 12.0);
    }
}
