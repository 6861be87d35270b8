package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.StickingTraits;

class StickingsCommandTest {

    @Test
    void threeStrokesInTheOrderOfADictionary() {
        assertThat(Run.of("stickings", "3").lines())
                .containsExactly("RRR", "RRL", "RLR", "RLL", "LRR", "LRL", "LLR", "LLL");
    }

    /** Common practice, no source: two strokes 4, three 8, four 16, eight 256. */
    @ParameterizedTest
    @CsvSource({"2,4", "3,8", "4,16", "8,256"})
    void upToEightStrokesAllAreListed(String strokes, int count) {
        assertThat(Run.of("stickings", strokes).lines()).hasSize(count);
    }

    /** OEIS A000031: necklaces of two colours; A000013: the same with the colours exchangeable. */
    @ParameterizedTest(name = "{0} strokes: {1} cycles, {2} with hands swapped")
    @CsvSource({"4,6,4", "5,8,4", "6,14,8", "7,20,10", "8,36,20"})
    void cyclesAreCountedOnce(String strokes, int cycles, int cyclesAndSwaps) {
        assertThat(Run.of("stickings", strokes, "--one-per-cycle").lines()).hasSize(cycles);
        assertThat(Run.of("stickings", strokes, "--one-per-cycle", "--one-per-swap").lines())
                .hasSize(cyclesAndSwaps);
    }

    @Test
    void onePerSwapKeepsHalf() {
        assertThat(Run.of("stickings", "6", "--one-per-swap").lines())
                .hasSize(32)
                .allMatch(line -> line.startsWith("R"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        4 --starts-with RL                  | RLRR RLRL RLLR RLLL
        4 --family singles                  | RLRL LRLR
        4 --family doubles                  | RRLL RLLR LRRL LLRR
        4 --longest-run 1                   | RLRL LRLR
        4 --longest-run 2                   | RRLL RLRL RLLR LRRL LRLR LLRR
        3 --lead-changes --starts-with R    | RRR RLR
        4 --same-after-swap --one-per-cycle | RRLL RLRL
        8 --cycle-of RLRRLRLL --starts-with RL | RLRRLRLL RLRLLRLR RLLRLRRL
        4 --from 14                         | LLLR LLLL
        4 --from 2 --take 2                 | RRLR RRLL
        4 --take 0                          |
        """)
    void filtersCombine(String args, String expected) {
        Run run =
                Run.of(
                        Stream.concat(Stream.of("stickings"), Stream.of(args.split(" ")))
                                .toArray(String[]::new));
        assertThat(run.code()).isZero();
        List<String> wanted = expected == null ? List.of() : Arrays.asList(expected.split(" "));
        assertThat(run.lines())
                .containsExactlyElementsOf(
                        wanted.stream().map(s -> Sticking.parse(s).text()).toList());
    }

    @Test
    void theParadiddleFamilyMixesSinglesAndDoubles() {
        List<String> found = Run.of("stickings", "8", "--family", "paradiddles").lines();
        assertThat(found)
                .contains("RLRR LRLL", "RLLR LRRL")
                .doesNotContain("RLRL RLRL", "RRLL RRLL");
        assertThat(found).allMatch(s -> StickingTraits.longestRun(Sticking.parse(s)) == 2);
    }

    @Test
    void longOnesAreListedLazily() {
        assertThat(Run.of("stickings", "9").lines()).hasSize(100);
        assertThat(Run.of("stickings", "512", "--take", "3").lines()).hasSize(3);
        assertThat(Run.of("stickings", "200", "--family", "singles").lines()).hasSize(2);
    }

    @Test
    void jsonTellsTheTotalAsAString() throws JsonProcessingException {
        JsonNode json = Run.of("stickings", "64", "--take", "1", "--json").json();
        assertThat(json.get("strokes").intValue()).isEqualTo(64);
        assertThat(json.get("total").textValue()).isEqualTo("18446744073709551616");
        assertThat(json.get("from").intValue()).isZero();
        assertThat(json.get("complete").booleanValue()).isTrue();
        assertThat(json.get("stickings")).hasSize(1);
    }

    @Test
    void findingNothingIsSaid() {
        Run run = Run.of("stickings", "4", "--family", "singles", "--starts-with", "RR");
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("no sticking is so\n");
        assertThat(Run.of("stickings", "2", "--from", "9").err())
                .isEqualTo("there are 4, none from the index 9 on\n");
    }

    /** None that begins with L is the first of two that differ by swapped hands. */
    @Test
    void aSearchThatIsCutOffHasAnExitCodeOfItsOwn() throws JsonProcessingException {
        Run run = Run.of("stickings", "24", "--starts-with", "L", "--one-per-swap", "--json");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.json().get("complete").booleanValue()).isFalse();
        assertThat(run.json().get("stickings")).isEmpty();
        assertThat(run.err()).startsWith("the list is incomplete").hasLineCount(1);
    }
}
