package org.kitweft.sound.bank.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.sound.bank.Reference;

/**
 * Computed modes against the published tables in {@code shared/reference}, which name their
 * sources.
 */
class PublishedModesTest {
    private static final BesselZeros ZEROS = new BesselZeros(6, 5);

    static Stream<CSVRecord> membrane() {
        return Reference.rows("membrane-modes.csv").stream();
    }

    /** Abramowitz and Stegun, table 9.5, eight decimals. */
    @ParameterizedTest
    @MethodSource("membrane")
    void besselZerosAgreeWithAbramowitzAndStegun(CSVRecord row) {
        int m = Integer.parseInt(row.get("m"));
        int n = Integer.parseInt(row.get("n"));
        assertThat(ZEROS.zero(m, n)).isCloseTo(number(row, "zero"), within(6e-9));
    }

    @ParameterizedTest
    @MethodSource("membrane")
    void membraneShapesHaveThePublishedRatios(CSVRecord row) {
        Membrane.Shape shape =
                Membrane.all().stream()
                        .filter(s -> s.m() == Integer.parseInt(row.get("m")))
                        .filter(s -> s.n() == Integer.parseInt(row.get("n")))
                        .findFirst()
                        .orElseThrow();
        assertThat(shape.ratio()).isCloseTo(number(row, "ratio"), within(1e-6));
    }

    /** A strike in the middle drives no mode that has a nodal diameter through it. */
    @Test
    void aStrikeInTheMiddleDrivesOnlyModesWithoutDiameter() {
        assertThat(Membrane.all())
                .allSatisfy(
                        shape -> {
                            if (shape.m() == 0) {
                                assertThat(Math.abs(shape.drive(0))).isGreaterThan(1);
                            } else {
                                assertThat(shape.drive(0)).isZero();
                            }
                        });
    }

    @ParameterizedTest
    @CsvSource({
        "UNIFORM,free_uniform_bar",
        "MARIMBA,marimba_bar",
        "VIBRAPHONE,vibraphone_bar",
        "XYLOPHONE,xylophone_bar"
    })
    void barsHaveThePublishedRatios(Bar bar, String body) {
        assertThat(rows(body))
                .isNotEmpty()
                .allSatisfy(row -> near(bar.ratio(Integer.parseInt(row.get("mode"))), row));
    }

    @Test
    void theKettlePullsTheHeadsModesIntoThePublishedRanges() {
        assertThat(rows("timpani_preferred"))
                .hasSize(5)
                .allSatisfy(
                        row -> {
                            int m = Integer.parseInt(row.get("mode"));
                            Membrane.Shape shape =
                                    Membrane.all().stream()
                                            .filter(s -> s.m() == m && s.n() == 1)
                                            .findFirst()
                                            .orElseThrow();
                            near(Kettle.ratio(shape), row);
                        });
    }

    /**
     * Inside low to high where the table has a range, else within half a unit of the fourth
     * decimal.
     */
    private static void near(double actual, CSVRecord row) {
        if (row.get("low").isEmpty()) {
            assertThat(actual).isCloseTo(number(row, "ratio"), within(6e-5));
        } else {
            assertThat(actual).isBetween(number(row, "low"), number(row, "high"));
        }
    }

    private static Stream<CSVRecord> rows(String body) {
        return Reference.rows("bar-modes.csv").stream().filter(row -> row.get("body").equals(body));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
