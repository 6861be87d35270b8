package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.reference.ReferenceTable;

class GridTest {

    /** Beats of a meter: common practice, no source. */
    @ParameterizedTest(name = "{0}: {1} beats")
    @CsvSource({
        "4/4, 4, 16800", "3/4, 3, 16800", "6/8, 2, 25200", "12/8, 4, 25200", "9/8, 3, 25200",
        "3/8, 1, 25200", "5/8, 5, 8400", "7/8, 7, 8400", " 6 / 4 , 6, 16800", "32/8, 32, 8400"
    })
    void aMeterHasBeats(String text, int beats, long beatTicks) {
        Meter meter = Meter.parse(text);
        assertThat(meter.beats()).isEqualTo(beats);
        assertThat(meter.beatTicks()).isEqualTo(beatTicks);
        assertThat(meter.barTicks())
                .isEqualTo((long) meter.count() * Ticks.PER_QUARTER * 4 / meter.unit());
        assertThat(Meter.parse(meter.text())).isEqualTo(meter);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "4", "4/", "0/4", "33/4", "4/2", "4/16", "-4/4", "4/4/4", "99999/4"})
    void whatIsNoMeterIsRefused(String text) {
        assertThatThrownBy(() -> Meter.parse(text))
                .isExactlyInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("as in 4/4 or 6/8");
    }

    @Test
    void everyStepOfEveryBeatIsAWholeNumberOfTicks() {
        for (int unit : List.of(4, 8)) {
            for (int count = 1; count <= Meter.MOST; count++) {
                Meter meter = new Meter(count, unit);
                for (int steps : Grid.stepsPerBeatChoices()) {
                    assertThat(meter.beatTicks() % steps).as("%s by %d", meter, steps).isZero();
                }
            }
        }
    }

    @Test
    void everySwungStepIsAWholeNumberOfTicks() {
        for (Meter meter : List.of(new Meter(4, 4), new Meter(6, 8), new Meter(7, 8))) {
            for (int steps : List.of(2, 4, 8)) {
                for (int swing = Grid.STRAIGHT; swing <= Grid.MOST_SWING; swing++) {
                    Grid grid = new Grid(meter, steps, swing, false);
                    long second = grid.sounding(grid.stepTicks(), steps);
                    assertThat(second * 100).isEqualTo(2 * grid.stepTicks() * swing);
                }
            }
        }
    }

    /** Percent and ratio: shared/reference/swing.csv, r to 1 is 100 r/(1+r) percent. */
    @Test
    void swingIsTheShareOfTheFirstStepOfAPair() {
        CSVRecord threeToOne =
                ReferenceTable.rows("swing.csv").stream()
                        .filter(row -> row.get("fact").equals("ratio 3:1"))
                        .findFirst()
                        .orElseThrow();
        Grid grid = Grid.SIXTEENTHS.withStepsPerBeat(2).withSwing(75);
        assertThat(Double.parseDouble(threeToOne.get("value"))).isEqualTo(75.0);
        long first = grid.sounding(grid.stepTicks(), 2);
        assertThat(first).isEqualTo(3 * (2 * grid.stepTicks() - first));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 5, 6, 7, 12})
    void oddDivisionsDoNotSwing(int steps) {
        Grid grid = Grid.SIXTEENTHS.withSwing(66);
        long step = grid.meter().beatTicks() / steps;
        assertThat(grid.sounding(step, steps)).isEqualTo(step);
    }

    @Test
    void swingKeepsTheOrderOfInstantsAndEveryPairsStart() {
        Grid grid = Grid.SIXTEENTHS.withSwing(71);
        long before = -1;
        for (long tick = 0; tick < grid.meter().beatTicks(); tick += 25) {
            long sounding = grid.sounding(tick, 8);
            assertThat(sounding).isGreaterThan(before);
            before = sounding;
        }
        assertThat(grid.sounding(2 * grid.stepTicks(), 4)).isEqualTo(2 * grid.stepTicks());
    }

    @ParameterizedTest
    @CsvSource({"0, 50", "9, 50", "13, 50", "4, 49", "4, 76", "-1, 50"})
    void whatIsNoGridIsRefused(int steps, int swing) {
        assertThatThrownBy(() -> new Grid(Meter.COMMON, steps, swing, false))
                .hasMessageContaining("expected");
    }

    /** Counting aloud: shared/reference/count-syllables.csv. */
    @Test
    void isCountedAsTheTableSays() {
        for (CSVRecord row : ReferenceTable.rows("count-syllables.csv")) {
            Grid grid =
                    Grid.SIXTEENTHS
                            .withMeter(new Meter(1, 4))
                            .withStepsPerBeat(Integer.parseInt(row.get("steps_per_beat")));
            assertThat(String.join(" ", CountSyllables.ofBar(grid)))
                    .isEqualTo(row.get("syllables"));
        }
        assertThat(CountSyllables.ofBar(Grid.SIXTEENTHS)).hasSize(16);
    }

    @ParameterizedTest
    @ValueSource(ints = {19, 401, 0, -90})
    void aTempoOutsideItsRangeIsRefused(int beats) {
        assertThatThrownBy(() -> new Tempo(beats)).hasMessageContaining("expected 20 to 400");
    }

    /** 500,000 microseconds are 120 quarters a minute: Standard MIDI Files 1.0, Set Tempo. */
    @ParameterizedTest(name = "{0} in {1}: {2} microseconds a quarter")
    @CsvSource({"120, 4/4, 500000", "80, 6/8, 500000", "240, 7/8, 500000", "90, 4/4, 666667"})
    void aTempoIsThatOfTheMetersBeat(int tempo, String meter, int microseconds) {
        assertThat(new Tempo(tempo).microsecondsPerQuarter(Meter.parse(meter)))
                .isEqualTo(microseconds);
        Meter read = Meter.parse(meter);
        assertThat(new Tempo(tempo).seconds(read.beatTicks(), read)).isEqualTo(60.0 / tempo);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "16800, 1", "8400, 1/2", "21000, 5/4", "50400, 3", "5600, 1/3"})
    void ticksAreFractionsOfQuarters(long ticks, String text) {
        assertThat(Ticks.text(ticks)).isEqualTo(text);
    }
}
