package org.kitweft.ui.transport;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapTempoTest {
    private static final long MILLI = 1_000_000;

    @ParameterizedTest(name = "a tap each {0} ms: {1}")
    @CsvSource({"500, 120", "600, 100", "667, 90", "100, 400", "2900, 21"})
    void evenTapsGiveTheirTempo(long millis, int tempo) {
        TapTempo taps = new TapTempo();
        assertThat(taps.tap(0)).isEmpty();
        for (int i = 1; i < 12; i++) {
            assertThat(taps.tap(i * millis * MILLI)).hasValue(tempo);
        }
    }

    @Test
    void aLongPauseBeginsAnew() {
        TapTempo taps = new TapTempo();
        taps.tap(0);
        taps.tap(500 * MILLI);
        assertThat(taps.tap(60_000 * MILLI)).isEmpty();
        assertThat(taps.tap(61_000 * MILLI)).hasValue(60);
    }
}
