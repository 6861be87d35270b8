package org.kitweft.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.reference.ReferenceTable;

/** Against shared/reference/oeis-counts.csv (OEIS), walked one by one. */
class CatalogueTest {
    private static final int LONGEST_WALKED = 12;

    private static final Map<String, Predicate<Sticking>> FILTERS =
            Map.of(
                    "necklaces", StickingTraits::firstOfItsCycle,
                    "necklaces_hands_swapped", StickingTraits::firstOfItsCycleAndSwap,
                    "no_run_longer_than_2", s -> StickingTraits.longestRun(s) <= 2,
                    "no_run_longer_than_3", s -> StickingTraits.longestRun(s) <= 3,
                    "no_run_longer_than_2_on_repeat",
                            s -> StickingTraits.longestRunOnRepeat(s) <= 2,
                    "no_run_longer_than_3_on_repeat",
                            s -> StickingTraits.longestRunOnRepeat(s) <= 3,
                    "stickings", s -> true);

    static Stream<Arguments> published() {
        return ReferenceTable.rows("oeis-counts.csv").stream()
                .filter(row -> FILTERS.containsKey(row.get("count")))
                .filter(row -> List.of("2", "").contains(row.get("k")))
                .filter(row -> Integer.parseInt(row.get("n")) <= LONGEST_WALKED)
                .map(
                        row ->
                                Arguments.of(
                                        row.get("count"),
                                        Integer.parseInt(row.get("n")),
                                        Long.parseLong(row.get("value")),
                                        row.get("oeis")));
    }

    @ParameterizedTest(name = "{0} of {1} strokes: {2} ({3})")
    @MethodSource("published")
    void walkingTheCatalogueGivesThePublishedCount(
            String count, int strokes, long value, String oeis) {
        assertThat(new Catalogue(strokes).stream().filter(FILTERS.get(count)).count())
                .as(oeis)
                .isEqualTo(value);
    }

    @Test
    void theTableCoversEveryFilter() {
        assertThat(published().map(row -> row.get()[0]).distinct().toList())
                .containsExactlyInAnyOrderElementsOf(FILTERS.keySet());
    }

    @Test
    void halfOfAllStickingsComeFirstOfTheirSwap() {
        assertThat(new Catalogue(9).stream().filter(StickingTraits::firstOfItsSwap).count())
                .isEqualTo(256);
    }

    @Test
    void isInTheOrderOfADictionaryWithRightBeforeLeft() {
        assertThat(new Catalogue(2).stream().map(Sticking::text))
                .containsExactly("RR", "RL", "LR", "LL");
    }

    @Test
    void anyPlaceOfTheLongestCanBeNamed() {
        Catalogue longest = new Catalogue(512);
        assertThat(longest.total()).isEqualTo(BigInteger.TWO.pow(512));
        assertThat(longest.at(longest.total().subtract(BigInteger.ONE)).letters())
                .containsExactly(Letter.L);
        assertThatThrownBy(() -> longest.at(longest.total()))
                .hasMessageContaining("none has the index");
        assertThatThrownBy(() -> new Catalogue(513)).hasMessageContaining("not 513");
    }

    @Test
    void startingWithIsTheFilterWithoutTheWalk() {
        List<Letter> start = List.of(Letter.R, Letter.L, Letter.L);
        assertThat(new Catalogue(7).startingWith(start))
                .containsExactlyElementsOf(
                        new Catalogue(7).stream().filter(s -> s.text().startsWith("RLL")).toList());
        assertThat(new Catalogue(2).startingWith(start)).isEmpty();
        assertThat(new Catalogue(3).startingWith(start)).hasSize(1);
    }
}
