package org.kitweft.sound.midi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.util.HexFormat;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ChunksTest {
    // Source: Standard MIDI Files 1.0 (RP-001, 1996), section 1; the table names each row's.
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(files = "shared/reference/smf-vlq.csv", useHeadersInDisplayName = true)
    void quantitiesAreWrittenAsTheStandardSays(String number, String bytes, String source) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Chunks.quantity(out, Long.parseLong(number, 16));
        assertThat(HexFormat.ofDelimiter(" ").withUpperCase().formatHex(out.toByteArray()))
                .as(source)
                .isEqualTo(bytes.toUpperCase(Locale.ROOT));
    }

    @Test
    void quantitiesBeyondTheStandardAreRefused() {
        assertThatThrownBy(() -> Chunks.quantity(new ByteArrayOutputStream(), 0x1000_0000L))
                .hasMessage("a MIDI file holds lengths of 0 to 268435455, not 268435456");
    }
}
