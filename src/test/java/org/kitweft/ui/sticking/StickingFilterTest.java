package org.kitweft.ui.sticking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Meter;
import org.kitweft.pattern.Letter;

class StickingFilterTest {
    private static StickingFilter of(int strokes, boolean cycles) {
        return new StickingFilter(strokes, List.of(), 0, Optional.empty(), false, cycles, false);
    }

    /** OEIS A000031, binary necklaces. */
    @ParameterizedTest(name = "{0} strokes: {1} cycles")
    @CsvSource({"1, 2", "2, 3", "3, 4", "4, 6", "5, 8", "6, 14", "7, 20", "8, 36"})
    void oneOfEachCycleAreTheNecklaces(int strokes, long cycles) {
        assertThat(of(strokes, true).matches()).hasSize((int) cycles);
    }

    @Test
    void withoutFiltersThereAreAll() {
        assertThat(of(8, false).matches()).hasSize(256);
    }

    @Test
    void aStartOfOtherLettersIsRefused() {
        assertThat(StickingFilter.start("rL")).containsExactly(Letter.R, Letter.L);
        assertThatThrownBy(() -> StickingFilter.start("RK")).hasMessageContaining("RK");
    }

    @ParameterizedTest
    @CsvSource({
        "4/4, 4, sixteenths",
        "6/8, 3, eighths",
        "6/8, 6, sixteenths",
        "7/8, 2, sixteenths",
        "4/4, 12, 12 to the beat"
    })
    void stepsAreCalledAsTheTradeCallsThem(String meter, int steps, String name) {
        assertThat(StepNames.of(Meter.parse(meter), steps)).isEqualTo(name);
    }
}
