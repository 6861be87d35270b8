package org.kitweft.explore.rhythm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.numbers.fraction.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;

/** Published values; sources and how sure they are stand in the tables' comment lines. */
class SyncopationTest {
    private static final MetricWeights SIXTEEN = MetricWeights.of(Grid.SIXTEENTHS);

    static List<CSVRecord> timelines() throws IOException {
        return ReferenceTable.rows("syncopation.csv");
    }

    static List<CSVRecord> bellPatterns() throws IOException {
        return ReferenceTable.rows("syncopation-12.csv");
    }

    static List<CSVRecord> examplesOf1984() throws IOException {
        return ReferenceTable.rows("lhl84-examples.csv");
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void weightedNoteToBeatDistanceAgreesWithGomezAndOthers2005(CSVRecord row) {
        Fraction distance = Syncopation.weightedNoteToBeat(Rhythm.of(row.get("onsets")), 4);
        assertThat(distance.doubleValue()).isEqualTo(Double.parseDouble(row.get("wnbd")));
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void offBeatnessAgreesWithGomezAndOthers2005(CSVRecord row) {
        assertThat(Syncopation.offBeatness(Rhythm.of(row.get("onsets"))))
                .isEqualTo(number(row, "offbeatness"));
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void keithsMeasureAgreesWithGomezAndOthers2005(CSVRecord row) {
        assertThat(Syncopation.keith(Rhythm.of(row.get("onsets")))).isEqualTo(number(row, "keith"));
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void theIndexOf1984IsThatOfTheTable(CSVRecord row) {
        assertThat(Syncopation.longuetHigginsLee(Rhythm.of(row.get("onsets")), SIXTEEN))
                .isEqualTo(number(row, "lhl"));
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void theFormOf2007CountsEverySilentStep(CSVRecord row) {
        assertThat(Syncopation.fitchRosenfeld(Rhythm.of(row.get("onsets")), SIXTEEN))
                .isEqualTo(number(row, "fitch_rosenfeld"));
    }

    @ParameterizedTest
    @MethodSource("timelines")
    void metricComplexityOf2002IsThatOfTheTable(CSVRecord row) {
        assertThat(Syncopation.metricComplexity(Rhythm.of(row.get("onsets")), SIXTEEN))
                .isEqualTo(number(row, "metric_complexity"));
    }

    /** Fitch and Rosenfeld 2007, figure 1, as quoted in the comment lines of syncopation.csv. */
    @Test
    void theFormOf2007GivesItsOwnFirstFigure() {
        assertThat(Syncopation.fitchRosenfeld(Rhythm.of("..x...x.x.x...x."), SIXTEEN)).isEqualTo(5);
    }

    @ParameterizedTest
    @MethodSource("bellPatterns")
    void bellPatternsHaveThePublishedDistance(CSVRecord row) {
        assertThat(Syncopation.weightedNoteToBeat(Rhythm.of(row.get("onsets")), 3))
                .isEqualTo(Fraction.parse(row.get("wnbd")));
    }

    @ParameterizedTest
    @MethodSource("bellPatterns")
    void bellPatternsHaveThePublishedOffBeatness(CSVRecord row) {
        assertThat(Syncopation.offBeatness(Rhythm.of(row.get("onsets"))))
                .isEqualTo(number(row, "offbeatness"));
    }

    @ParameterizedTest
    @MethodSource("examplesOf1984")
    void strengthsNoteByNoteAreThoseOf1984(CSVRecord row) {
        String strengths =
                Syncopation.longuetHigginsLeeByNote(Rhythm.of(row.get("onsets")), meterOf(row))
                        .stream()
                        .flatMap(strength -> strength.stream().boxed())
                        .filter(strength -> strength >= 0)
                        .map(String::valueOf)
                        .collect(Collectors.joining(" "));
        assertThat(strengths.isEmpty() ? "none" : strengths).isEqualTo(row.get("strengths"));
    }

    @ParameterizedTest
    @MethodSource("examplesOf1984")
    void weightsFollowFromTheMeter(CSVRecord row) {
        assertThat(meterOf(row).weights())
                .isEqualTo(Stream.of(row.get("weights").split(" ")).map(Integer::valueOf).toList());
    }

    @ParameterizedTest(name = "{0} in {1} steps a beat")
    @CsvSource(
            textBlock =
                    """
                    4/4, 2, 0 -3 -2 -3 -1 -3 -2 -3
                    3/4, 2, 0 -2 -1 -2 -1 -2
                    6/8, 3, 0 -2 -2 -1 -2 -2
                    6/8, 6, 0 -3 -2 -3 -2 -3 -1 -3 -2 -3 -2 -3
                    5/8, 1, 0 -1 -1 -1 -1
                    """)
    void aBarDividesAsItsMeterIsCounted(String meter, int steps, String weights) {
        Grid grid = Grid.SIXTEENTHS.withMeter(Meter.parse(meter)).withStepsPerBeat(steps);
        assertThat(MetricWeights.of(grid).weights())
                .isEqualTo(Arrays.stream(weights.split(" ")).map(Integer::valueOf).toList());
    }

    @Test
    void silenceIsNotSyncopated() {
        Rhythm silence = Rhythm.of("................");
        assertThat(Syncopation.longuetHigginsLee(silence, SIXTEEN)).isZero();
        assertThat(Syncopation.weightedNoteToBeat(silence, 4)).isEqualTo(Fraction.ZERO);
    }

    @Test
    void aRhythmOfAnotherLengthThanItsMeterIsRefused() {
        assertThatThrownBy(() -> Syncopation.fitchRosenfeld(Rhythm.of("x..x"), SIXTEEN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the rhythm has 4 steps, the meter 16: expected as many");
    }

    private static MetricWeights meterOf(CSVRecord row) {
        return MetricWeights.ofDivisions(
                Stream.of(row.get("meter").split(" ")).map(Integer::valueOf).toList());
    }

    private static int number(CSVRecord row, String column) {
        return Integer.parseInt(row.get(column));
    }
}
