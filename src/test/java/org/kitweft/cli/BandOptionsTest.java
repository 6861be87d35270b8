package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandOptionsTest {
    private static final String CHART = "Dm7 G7 | Cmaj7 %";

    @TempDir Path folder;

    private byte[] midi(String name, String... more) throws IOException {
        Path target = folder.resolve(name);
        String[] args = new String[7 + more.length];
        System.arraycopy(
                new String[] {
                    "groove", "RLRR LRLL", "--midi", target.toString(), "--chords", CHART, "--force"
                },
                0,
                args,
                0,
                7);
        System.arraycopy(more, 0, args, 7, more.length);
        Run run = Run.of(args);
        assertThat(run.code()).as(run.err()).isZero();
        return Files.readAllBytes(target);
    }

    @Test
    void withoutBarsTheGrooveLastsAsLongAsTheChart() throws JsonProcessingException {
        assertThat(
                        Run.of("groove", "RLRR LRLL", "--chords", CHART, "--json")
                                .json()
                                .get("bars")
                                .intValue())
                .isEqualTo(2);
    }

    @Test
    void theSameInputAndSeedGiveTheSameFileByteForByte() throws IOException {
        assertThat(midi("a.mid", "--style", "swing", "--seed", "7"))
                .isEqualTo(midi("b.mid", "--style", "swing", "--seed", "7"));
    }

    @Test
    void aPartLeftOutIsNotInTheFile() throws IOException {
        assertThat(midi("all.mid").length)
                .isGreaterThan(midi("less.mid", "--without", "drums,bass").length);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        --chords   | Hx7             | chord
        --style    | polka           | polka
        --clave    | 4-1             | --clave 4-1
        --without  | trumpet         | trumpet
        """)
    void badInputIsTold(String option, String value, String named) {
        Run run =
                option.equals("--chords")
                        ? Run.of("groove", "RLRR", option, value)
                        : Run.of("groove", "RLRR", "--chords", CHART, option, value);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err().lines().findFirst().orElseThrow()).contains(named);
    }
}
