package org.kitweft.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.reference.ReferenceTable;

/** Against shared/reference/rudiments.csv (Percussive Arts Society, 1984). */
class RudimentsTest {
    private final Rudiments rudiments = Rudiments.load();

    @Test
    void areTheFortyOfTheSheetInItsOrder() {
        assertThat(rudiments.all().stream().map(Rudiment::number))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 40).boxed().toList());
        assertThat(rudiments.all().stream().map(Rudiment::name))
                .containsExactlyElementsOf(
                        ReferenceTable.rows("rudiments.csv").stream()
                                .map(row -> row.get("name"))
                                .toList());
    }

    /** The printed text and ours differ in spaces only, so the strokes must be equal one by one. */
    @Test
    void haveTheStrokesOfTheTable() {
        for (CSVRecord row : ReferenceTable.rows("rudiments.csv")) {
            Rudiment rudiment = rudiments.find(row.get("number")).orElseThrow();
            assertThat(rudiment.sticking().text().replace(" ", ""))
                    .as(row.get("name"))
                    .isEqualTo(row.get("sticking").replace(" ", ""));
        }
    }

    /**
     * Rows whose note says so come back with the same hand. Lesson 25 is the one exception to the
     * rule of alternation: its drag, by the left hand, stands between the two right strokes.
     */
    @Test
    void thoseThatDoNotChangeHandsSayNo() {
        List<String> changing =
                ReferenceTable.rows("rudiments.csv").stream()
                        .filter(row -> row.get("note").contains("does not change hands"))
                        .filter(
                                row ->
                                        StickingTraits.leadChangesOnRepeat(
                                                Sticking.parse(row.get("sticking"))))
                        .map(row -> row.get("name"))
                        .toList();
        assertThat(changing).containsExactly("Lesson 25");
    }

    /**
     * Printed once only, right hand first, and known to change over: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"RRLLR", "RRLLRRLLR", "RLR", "LRRL L RR L"})
    void theOddRollsChangeHands(String text) {
        assertThat(StickingTraits.leadChangesOnRepeat(Sticking.parse(text))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"16", "Single Paradiddle", "single-paradiddle", "SINGLE PARADIDDLE"})
    void areFoundByNumberOrName(String asked) {
        assertThat(rudiments.find(asked).orElseThrow().sticking().text())
                .isEqualTo(">R L R R >L R L L");
    }

    @Test
    void whatIsNoneIsNotFound() {
        assertThat(rudiments.find("41")).isEmpty();
    }
}
