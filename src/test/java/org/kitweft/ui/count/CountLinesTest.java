package org.kitweft.ui.count;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.cli.Cli;
import org.kitweft.cli.Terminal;
import org.kitweft.explore.Choices;
import org.kitweft.explore.CountName;
import org.kitweft.ui.session.Session;

class CountLinesTest {

    /** Eight strokes, four drums for each hand: 2 to the 8th, 4 squared, 4 to the 8th. */
    @Test
    void theFourDrumsExampleCountsAsAgreed() {
        Session opening = Session.opening();
        var kit = opening.recipe().kit();
        Choices choices =
                Choices.NONE
                        .with("R=snare,high-tom,mid-tom,floor-tom", kit)
                        .with("L=snare,high-tom,mid-tom,floor-tom", kit);
        List<CountLines.Line> lines =
                CountLines.of(opening.typed("RLRR LRLL").with(choices)).lines();
        assertThat(lines.subList(0, 5))
                .extracting(line -> Numbers.exact(line.number()))
                .containsExactly("256", "16", "65,536", "16,777,216", "65,536");
        assertThat(lines).extracting(CountLines.Line::name).doesNotContain(CountName.UNDER_RULES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"RLRR LRLL", "RLK-", "BRL"})
    void theCommandCountsTheSameUntilSomebodyChooses(String sticking) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(stream, stream, StandardCharsets.UTF_8);
        assertThat(Cli.run(terminal, "count", sticking, "--json")).isEqualTo(Cli.DONE);
        JsonNode json = new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
        List<CountLines.Line> lines = CountLines.of(Session.opening().typed(sticking)).lines();
        assertThat(lines).isNotEmpty();
        for (CountLines.Line line : lines) {
            assertThat(line.number().toString()).isEqualTo(json.get(line.name().id()).asText());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    0                       | 0
                    4294967296              | 4,294,967,296
                    999999999999999999999   | 999,999,999,999,999,999,999
                    1000000000000000000000  | about 1.00 × 10²¹
                    340282366920938463463374607431768211456 | about 3.40 × 10³⁸
                    99999999999999999999999 | about 1.00 × 10²³
                    """)
    void numbersAreWrittenToBeRead(BigInteger number, String text) {
        assertThat(Numbers.brief(number)).isEqualTo(text);
    }
}
