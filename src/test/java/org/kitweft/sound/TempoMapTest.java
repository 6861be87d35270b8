package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Ticks;

class TempoMapTest {
    private static final long QUARTER = Ticks.PER_QUARTER;

    @Test
    void theStandardsOwnExample() {
        // RP-001 (shared/reference/smf-example.md): 6144 ticks at 96 per quarter and 500000 us,
        // that is 120 quarters a minute, last 32000 ms.
        TempoMap map = new TempoMap(List.of(new Pace(0, Meter.COMMON, new Tempo(120))));
        assertThat(map.seconds(6144 * QUARTER / 96)).isCloseTo(32.0, within(1e-12));
    }

    @ParameterizedTest(name = "quarter {0} at second {1}")
    @CsvSource({"-2, -2", "0, 0", "1, 1", "4, 4", "5, 4.5", "8, 6", "11, 8", "14, 10"})
    void pacesFollowEachOther(int quarter, double second) {
        TempoMap map =
                new TempoMap(
                        List.of(
                                new Pace(-4 * QUARTER, Meter.COMMON, new Tempo(60)),
                                new Pace(4 * QUARTER, Meter.COMMON, new Tempo(120)),
                                // dotted quarters: 1.5 quarters a second
                                new Pace(8 * QUARTER, new Meter(6, 8), new Tempo(60))));
        assertThat(map.seconds(quarter * QUARTER)).isCloseTo(second, within(1e-12));
    }

    @Test
    void pacesThatChangeNothingAreLeftOut() {
        Pace pace = new Pace(0, Meter.COMMON, new Tempo(60));
        Pace same = new Pace(QUARTER, Meter.COMMON, new Tempo(60));
        assertThat(new TempoMap(List.of(pace, same)).paces()).containsExactly(pace);
    }

    @Test
    void pacesThatDoNotAscendAreRefused() {
        Pace pace = new Pace(5, Meter.COMMON, new Tempo(60));
        assertThatThrownBy(() -> new TempoMap(List.of(pace, pace)))
                .hasMessage("the paces of a tempo map ascend, but tick 5 follows tick 5");
    }
}
