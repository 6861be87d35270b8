package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ListCommandTest {
    private static final String[] TWO_BY_TWO = {
        "list", "RL", "--choose", "R=snare,ride.bell", "--choose", "L=snare,high-tom", "--json"
    };

    private static Run run(String[] first, String... more) {
        List<String> args = new ArrayList<>(List.of(first));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void listsInTheOrderOfTheChoicesFromAnIndexOn() throws JsonProcessingException {
        JsonNode json = run(TWO_BY_TWO, "--from", "1", "--take", "2").json();
        assertThat(json.get("total").textValue()).isEqualTo("4");
        assertThat(json.get("variations").findValuesAsText("index")).containsExactly("1", "2");
        assertThat(json.get("variations").get(0).get("sounds"))
                .extracting(JsonNode::textValue)
                .containsExactly("snare.head", "high-tom.head");
    }

    /** On the five-piece kit ride and snare are 67.5 cm apart: hypot(56 - -5, 74 - 45), by hand. */
    @Test
    void aVariationTellsTravelTempoAndRoles() throws JsonProcessingException {
        JsonNode json =
                Run.of("list", "RR", "--choose", "R=snare,ride", "--pin", "2=ride", "--json")
                        .json();
        JsonNode first = json.get("variations").get(0);
        assertThat(first.get("travelCm").doubleValue()).isEqualTo(67.5);
        assertThat(first.get("tempoCeiling").intValue()).isBetween(20, 400);
        assertThat(first.get("roles").fieldNames())
                .toIterable()
                .containsExactly("time", "fill", "punch");
        assertThat(first.get("roles")).allMatch(role -> role.doubleValue() >= 0);
    }

    @Test
    void theBestTravelTheLeast() throws JsonProcessingException {
        JsonNode json =
                Run.of("list", "RRRR", "--choose", "R=ride,snare", "--best", "3", "--json").json();
        assertThat(json.get("variations"))
                .extracting(v -> v.get("travelCm").doubleValue())
                .containsExactly(0.0, 0.0, 67.5);
    }

    @Test
    void theSameSeedDrawsTheSameSample() {
        assertThat(run(TWO_BY_TWO, "--sample", "5", "--seed", "7").out())
                .isEqualTo(run(TWO_BY_TWO, "--sample", "5", "--seed", "7").out());
    }

    @Test
    void inWordsItSaysWhatLimitsTheTempoAndWhatTheModelIs() {
        Run run =
                Run.of(
                        "list",
                        "RLRR LRLL",
                        "--choose",
                        "R=ride,snare",
                        "--choose",
                        "L=snare",
                        "--best",
                        "2");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("16 variations").contains("not a verdict on a person");
    }

    @Test
    void theBestForARoleAreExactWhereAllAreLookedAt() {
        String[] sixteen = {
            "list", "RLRL", "--choose", "R=snare,floor-tom", "--choose", "L=snare,high-tom"
        };
        Run run = run(sixteen, "--best", "2", "--as", "fill");
        assertThat(run(sixteen, "--best", "2", "--as", "Fill").out()).isEqualTo(run.out());
        assertThat(run.out())
                .contains("listed: the best as fill, all 16 looked at")
                .contains("  as fill: ")
                .containsPattern("\\d+ % keeps no eighths on one cymbal");
        double best =
                runJson(run(sixteen, "--take", "16", "--json")).stream()
                        .max(Double::compare)
                        .orElseThrow();
        assertThat(runJson(run(sixteen, "--best", "1", "--as", "fill", "--json")))
                .containsExactly(best);
    }

    private static List<Double> runJson(Run run) {
        try {
            List<Double> fills = new ArrayList<>();
            run.json()
                    .get("variations")
                    .forEach(v -> fills.add(v.get("roles").get("fill").doubleValue()));
            return fills;
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void whatServesNothingIsSaidToo() {
        assertThat(Run.of("list", "-").out()).contains("as time: nothing speaks for it\n");
    }

    @Test
    void ofManyItSaysHowManyWereLookedAt() {
        Run run =
                Run.of(
                        "list",
                        "RLRR LRLL",
                        "--best",
                        "1",
                        "--as",
                        "punch",
                        "--looks",
                        "150",
                        "--seed",
                        "4");
        assertThat(run.out()).contains("the best as punch of 150 looked at, there may be better");
    }

    /** Millions of them: would never end if it went on, or gathered them first. */
    @ParameterizedTest
    @ValueSource(strings = {"--best 5000000", "--best 5000000 --json", "--take 5000000"})
    void aListThatNobodyReadsAnyMoreEnds(String options) {
        ByteArrayOutputStream read = new ByteArrayOutputStream();
        OutputStream closing =
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        if (read.size() == 20_000) {
                            throw new IOException("broken pipe");
                        }
                        read.write(b);
                    }
                };
        PrintStream out = new PrintStream(closing, false, StandardCharsets.UTF_8);
        List<String> args = new ArrayList<>(List.of("list", "RLRR LRLL"));
        args.addAll(List.of(options.split(" ")));
        int code =
                Cli.run(
                        new Terminal(out, out, StandardCharsets.UTF_8),
                        args.toArray(String[]::new));
        assertThat(code).isEqualTo(Cli.WRONG_INPUT);
        assertThat(read.toString(StandardCharsets.UTF_8))
                .containsPattern("5,?764,?801")
                .contains("snare");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        --pin 9=snare            | 9
        --pin 1=snair            | did you mean "snare"
        --reach -1               | reach -1 cm: expected a number of centimetres, 0 or more
        --surfaces 5..2          | surfaces 5..2
        --from 99999999999999999 | expected an index from 0 to
        --at-tempo 0             | tempo 0: expected 20 to 400
        --best 0                 | --best 0: expected 1 or more
        --pin 1=snare --pin 1=ride --loop | pin 1=snare
        --best 2 --as solo       | --as solo: expected time, fill or punch
        --as fill                | --as fill: expected --best N with it
        --best 2 --as fill --looks 0 | --looks 0: expected 1 or more
        """)
    void badInputIsOneLine(String options, String expected) {
        Run run = run(new String[] {"list", "RLRR"}, options.split(" "));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(expected);
    }
}
