package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhraseOptionsTest {
    @TempDir Path folder;

    @Test
    void oneStickingGivesAllThreeSections() throws JsonProcessingException {
        JsonNode json = Run.of("groove", "RLRR LRLL", "--phrase", "4", "--json").json();
        assertThat(json.get("bars").intValue()).isEqualTo(4);
        assertThat(json.get("sections").toString())
                .isEqualTo(
                        "[{\"role\":\"time\",\"bar\":1,\"bars\":2},"
                                + "{\"role\":\"fill\",\"bar\":3,\"bars\":1},"
                                + "{\"role\":\"punch\",\"bar\":4,\"bars\":1}]");
        JsonNode last = json.get("hits").get(json.get("hits").size() - 1);
        assertThat(last.get("bar").intValue()).isEqualTo(4);
        // The right hand's last stroke of RLRR LRLL twice: the sixth sixteenth of its second half.
        assertThat(last.get("step").intValue()).isEqualTo(14);
        assertThat(last.get("start").asText()).isEqualTo("61/4");
    }

    @Test
    void theTextSaysWhatEachSectionIsFor() {
        Run run = Run.of("groove", "RLRR LRLL", "--phrase", "8");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Time, bars 1 to 6", "Fill, bar 7", "Punch, bar 8")
                .contains("Crash");
    }

    @Test
    void aPhraseIsWrittenInEveryKind() throws IOException {
        String[] kinds = {"midi", "pdf", "svg", "png", "musicxml"};
        String[] args = new String[6 + 2 * kinds.length];
        System.arraycopy(
                new String[] {"groove", "RLRR LRLL", "--phrase", "4", "--chords", "C | F"},
                0,
                args,
                0,
                6);
        for (int i = 0; i < kinds.length; i++) {
            args[6 + 2 * i] = "--" + kinds[i];
            args[7 + 2 * i] = folder.resolve("phrase." + kinds[i]).toString();
        }
        Run run = Run.of(args);
        assertThat(run.code()).as(run.err()).isZero();
        String xml = Files.readString(folder.resolve("phrase.musicxml"));
        assertThat(xml).contains("Time", "Fill", "Punch").contains("<measure number=\"4\"");
        String midi = Files.readString(folder.resolve("phrase.midi"), StandardCharsets.ISO_8859_1);
        assertThat(midi).contains("drums", "bass", "comping", "punches");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
        --phrase 2                   ; a phrase of 2 bars: time, fill and punch need at least 3
        --phrase 513                 ; a phrase of 513 bars: expected at most 512
        --phrase 8 --bars 8          ; --bars is for a groove
        --phrase 3 --chords C|C|C|C  ; chart, character 7
        """)
    void badInputIsTold(String options, String named) {
        String[] more = options.split(" ", -1);
        String[] args = new String[2 + more.length];
        args[0] = "groove";
        args[1] = "RLRR";
        System.arraycopy(more, 0, args, 2, more.length);
        Run run = Run.of(args);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err().lines().findFirst().orElseThrow()).contains(named);
    }
}
