package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.pattern.Sticking;

class StickingsForARoleTest {

    @Test
    void listsTheBestWithReasonsAndTheOptionsThatPlayThem() throws Exception {
        Run run = Run.of("stickings", "16", "--role", "fill", "--best", "3", "--json");
        JsonNode found = run.json();
        assertThat(found.get("strokes").asInt()).isEqualTo(16);
        assertThat(found.get("role").asText()).isEqualTo("fill");
        assertThat(found.get("seed").asText()).isEqualTo("1");
        assertThat(found.get("servings")).hasSize(3);
        double before = 1;
        for (JsonNode serving : found.get("servings")) {
            assertThat(serving.get("score").asDouble()).isBetween(0.5, before);
            before = serving.get("score").asDouble();
            assertThat(serving.get("reasons")).isNotEmpty();
            assertThat(serving.get("difficulty").asDouble()).isPositive();
            assertThat(Sticking.parse(serving.get("sticking").asText()).size()).isEqualTo(16);
            assertPlays(serving);
        }
    }

    /** The command groove takes what is printed, and says that nothing conflicts. */
    private static void assertPlays(JsonNode serving) throws Exception {
        List<String> words = new ArrayList<>(List.of("groove", "--json"));
        serving.get("options").forEach(option -> words.add(option.asText()));
        words.add("--");
        words.add(serving.get("sticking").asText());
        Run played = Run.of(words.toArray(new String[0]));
        assertThat(played.err()).isEmpty();
        assertThat(played.json().get("conflicts")).isEmpty();
        assertThat(played.json().get("hits")).isNotEmpty();
    }

    @Test
    void theSameSeedFindsTheSameAgainAndAnotherOthers() {
        String first = Run.of("stickings", "8", "--role", "time", "--seed", "3").out();
        assertThat(Run.of("stickings", "8", "--role", "time", "--seed", "3").out())
                .isEqualTo(first)
                .startsWith("The best 6 for time, seed 3.");
        assertThat(Run.of("stickings", "8", "--role", "time", "--seed", "4").out())
                .isNotEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"extended", "hand-drums"})
    void searchesOtherKitsToo(String kit) {
        Run run = Run.of("stickings", "6", "--role", "punch", "--kit", kit, "--meter", "6/8");
        assertThat(run.code()).isZero();
        assertThat(run.lines()).anyMatch(line -> line.startsWith("  --on "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        --role solo               | --role solo: expected time, fill or punch
        --role fill --best 0      | --best 0: expected 1 to 1000
        --role fill --from 2      | --from goes with the catalogue, not with --role
        --role fill --family singles | --family goes with the catalogue, not with --role
        --seed 2                  | --seed goes with --role only
        --kit marimba             | --kit goes with --role only
        """)
    void whatDoesNotGoTogetherIsRefusedInOneLine(String options, String message) {
        List<String> words = new ArrayList<>(List.of("stickings", "8"));
        words.addAll(List.of(options.split(" ")));
        Run run = Run.of(words.toArray(new String[0]));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(message);
        assertThat(run.out()).isEmpty();
    }
}
