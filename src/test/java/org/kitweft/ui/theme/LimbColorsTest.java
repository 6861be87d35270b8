package org.kitweft.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.kitweft.kit.Limb;

class LimbColorsTest {

    /** Contrast ratio of WCAG 2.1, "relative luminance" and "contrast ratio". */
    static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed())
                + 0.7152 * linear(c.getGreen())
                + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int channel) {
        double s = channel / 255.0;
        return s <= 0.03928 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }

    /** WCAG 2.1 success criterion 1.4.3 asks 4.5:1 of text. */
    @ParameterizedTest
    @EnumSource(Limb.class)
    void theLetterOnEveryLimbsColourCanBeRead(Limb limb) {
        assertThat(contrast(LimbColors.of(limb), LimbColors.INK)).isGreaterThan(4.5);
    }
}
