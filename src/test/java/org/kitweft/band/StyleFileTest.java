package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.kit.UnknownNameException;

class StyleFileTest {

    private static String ballad() {
        try (InputStream stream =
                Objects.requireNonNull(
                        StyleFileTest.class.getResourceAsStream(
                                "/org/kitweft/shared/styles/ballad.json"))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyBuiltInStyleLoadsUnderItsName() {
        for (String name : BuiltInStyles.names()) {
            assertThat(BuiltInStyles.load(name).name()).isEqualTo(name);
        }
        assertThat(BuiltInStyles.load("salsa").hasClave()).isTrue();
        assertThat(BuiltInStyles.load("swing").swing()).isEqualTo(67);
        assertThatThrownBy(() -> BuiltInStyles.load("bosa"))
                .isInstanceOf(UnknownNameException.class)
                .hasMessageContaining("did you mean \"bossa\"?");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
                    "swing": 50; "swing": 80; swing 80: expected 50 to 75 percent
                    "swing": 50; "swing": "no"; expected a whole number "swing"
                    [2]; [3]; pulses: expected 2, 4 or both steps per beat
                    "low": 28; "low": 50; bass: high 55: expected 73 to 127
                    "program": 33; "program": 133; bass: program 133: expected 0 to 127
                    "kind": "close"; "kind": "wide"; comping, voicing: unknown kind "wide"
                    "fill": "hold"; "fill": "loud"; bass: unknown fill "loud"
                    5 a"; 5 q"; bass, figure 3: figure, character 15: found 'q', expected a rest '-', held on '~' or one of 1 3 5 6 7 8 ,5 w a, in "1 ~ ~ ~ ~ ~ 5 q"
                    5 a"; 5"; bass: the figures of a line have one length
                    "weight": 3, "reason": "The root, held."; "weight": 0, "reason": "x"; bass, figure 1: a figure has a step, a reason and a weight of 1 or more
                    "pulses": [2]; "pulses": [2], "tempo": 60; unknown field "tempo"
                    "strikesChanges": true; "strikesChange": true; bass: unknown field "strikesChange"
                    "strikesChanges": true; "strikesChanges": 1; bass: expected true or false "strikesChanges"
                    "title": "Slow ballad"; "title": 1; expected a text "title"
                    """)
    void namesEachFaultAndItsPlace(String part, String instead, String fault) {
        String broken = ballad().replace(part, instead);
        assertThat(broken).isNotEqualTo(ballad());
        assertThatThrownBy(() -> StyleFile.parse(broken, "my.json"))
                .isInstanceOf(StyleFormatException.class)
                .hasMessage("style file my.json: " + fault);
    }

    @Test
    void aStyleOfOnesOwnIsReadFromItsFile(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("slow.json");
        Files.writeString(file, ballad().replace("\"ballad\"", "\"slow\""));
        assertThat(StyleFile.read(file).name()).isEqualTo("slow");
        Files.write(file, new byte[] {(byte) 0xff, 0});
        assertThatThrownBy(() -> StyleFile.read(file))
                .isInstanceOf(StyleFormatException.class)
                .hasMessageContaining("it is not text in UTF-8");
    }

    @Test
    void aFileCutShortNamesTheLine() {
        assertThatThrownBy(() -> StyleFile.parse(ballad().substring(0, 300), "my.json"))
                .isInstanceOf(StyleFormatException.class)
                .hasMessageMatching(
                        "style file my.json: line \\d+, column \\d+: it is not whole JSON text");
    }
}
