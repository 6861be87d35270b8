package org.kitweft.explore.rhythm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Toussaint 2005; the table's comment lines say how sure each column is. */
class EuclideanRhythmTest {

    static List<CSVRecord> published() throws IOException {
        return ReferenceTable.rows("euclidean.csv");
    }

    @ParameterizedTest
    @MethodSource("published")
    void isThePublishedStringStartingPointIncluded(CSVRecord row) {
        assertThat(of(row).text()).isEqualTo(row.get("published"));
    }

    @ParameterizedTest
    @MethodSource("published")
    void hasThePublishedIntervals(CSVRecord row) {
        assertThat(of(row).durations().stream().map(String::valueOf).collect(Collectors.joining()))
                .isEqualTo(row.get("intervals"));
    }

    /** The defining property (Demaine and others 2009): durations differ by one step at most. */
    @Test
    void spreadsAsEvenlyAsWholeStepsAllow() {
        for (int steps = 1; steps <= 32; steps++) {
            for (int strokes = 1; strokes <= steps; strokes++) {
                Rhythm rhythm = EuclideanRhythm.of(strokes, steps);
                assertThat(rhythm.struck()).hasSize(strokes).contains(0);
                int shortest = steps / strokes;
                assertThat(rhythm.durations())
                        .allSatisfy(d -> assertThat(d).isBetween(shortest, shortest + 1));
            }
        }
    }

    @Test
    void noStrokesAreSilence() {
        assertThat(EuclideanRhythm.of(0, 4).text()).isEqualTo("....");
    }

    @Test
    void moreStrokesThanStepsAreRefused() {
        assertThatThrownBy(() -> EuclideanRhythm.of(5, 4))
                .hasMessageStartingWith("5 strokes in 4 steps: expected");
    }

    private static Rhythm of(CSVRecord row) {
        return EuclideanRhythm.of(Integer.parseInt(row.get("k")), Integer.parseInt(row.get("n")));
    }
}
