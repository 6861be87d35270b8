package org.kitweft.score.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoiseExposureTest {

    /** NIOSH Publication No. 98-126, section 1.1, as in shared/reference/noise-exposure.csv. */
    @Test
    void agreesWithThePublishedTable() throws IOException {
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .setCommentMarker('#')
                        .get();
        int rows = 0;
        for (CSVRecord row :
                format.parse(
                        Files.newBufferedReader(Path.of("shared/reference/noise-exposure.csv")))) {
            double hours =
                    NoiseExposure.perDay(Integer.parseInt(row.get("level_dBA"))).toMillis()
                            / 3_600_000.0;
            assertThat(hours).isCloseTo(Double.parseDouble(row.get("hours_per_day")), within(1e-6));
            rows++;
        }
        assertThat(rows).isEqualTo(36);
    }

    @ParameterizedTest
    @CsvSource({"85, 8 h", "88, 4 h", "97, 30 min", "103, 7 min", "115, 28 s"})
    void saysTimesInWords(int level, String words) {
        assertThat(NoiseExposure.words(level)).isEqualTo(words);
    }

    @Test
    void refusesLevelsOutsideTheTable() {
        assertThatThrownBy(() -> NoiseExposure.perDay(116)).hasMessageContaining("80 to 115");
    }
}
