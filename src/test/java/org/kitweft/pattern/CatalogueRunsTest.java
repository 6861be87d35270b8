package org.kitweft.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CatalogueRunsTest {

    @Test
    void leapingFindsWhatFilteringFinds() {
        for (int strokes = 1; strokes <= 9; strokes++) {
            Catalogue catalogue = new Catalogue(strokes);
            for (int longest = 1; longest <= strokes + 1; longest++) {
                int most = longest;
                assertThat(catalogue.withRunsUpTo(longest))
                        .containsExactlyElementsOf(
                                catalogue.stream()
                                        .filter(s -> StickingTraits.longestRun(s) <= most)
                                        .toList());
            }
        }
    }

    @Test
    void twoSingleStrokeStickingsOfAnyLengthAreFoundAtOnce() {
        assertThat(new Catalogue(512).withRunsUpTo(1).map(Sticking::text))
                .containsExactly(
                        "RLRL " + "RLRL ".repeat(126) + "RLRL",
                        "LRLR " + "LRLR ".repeat(126) + "LRLR");
    }

    @Test
    void aRunOfNoStrokeIsRefused() {
        assertThatThrownBy(() -> new Catalogue(4).withRunsUpTo(0))
                .hasMessage("runs of up to 0: expected 1 or more");
    }
}
