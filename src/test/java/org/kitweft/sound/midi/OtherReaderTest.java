package org.kitweft.sound.midi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.sound.midi.OtherReader.ReadNote;

/** Checks the checker: the standard's own example files, read by the library we check ours with. */
class OtherReaderTest {
    @ParameterizedTest(name = "format {0}")
    @ValueSource(ints = {0, 1})
    void findsInTheStandardsExamplesWhatTheStandardSays(int format) throws IOException {
        OtherReader read = new OtherReader(example(format));
        assertThat(read.format).isEqualTo(format);
        assertThat(read.perQuarter).isEqualTo(96);
        // RP-001 as in shared/reference/smf-example.md, "What a reader must find in both".
        assertThat(read.notes)
                .extracting(
                        ReadNote::channel,
                        ReadNote::program,
                        ReadNote::key,
                        ReadNote::velocity,
                        ReadNote::on,
                        ReadNote::off)
                .containsExactlyInAnyOrder(
                        tuple(3, 70, 48, 96, 0L, 384L),
                        tuple(3, 70, 60, 96, 0L, 384L),
                        tuple(2, 46, 67, 64, 96L, 384L),
                        tuple(1, 5, 76, 32, 192L, 384L));
        assertThat(read.metas(0x51).get(0).bytes()).containsExactly(0x07, 0xA1, 0x20);
    }

    /** The bytes in the first or second code block. */
    private static byte[] example(int block) throws IOException {
        List<String> blocks = new ArrayList<>();
        StringBuilder hex = new StringBuilder();
        boolean inside = false;
        for (String line : Files.readAllLines(Path.of("shared/reference/smf-example.md"))) {
            if (line.startsWith("```")) {
                if (inside) {
                    blocks.add(hex.toString());
                    hex.setLength(0);
                }
                inside = !inside;
            } else if (inside) {
                hex.append(line.replace(" ", ""));
            }
        }
        return HexFormat.of().parseHex(blocks.get(block));
    }
}
