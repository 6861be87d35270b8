package org.kitweft.sound.synth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.media.sound.SF2Soundbank;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BankTest {
    @TempDir Path folder;

    private static byte[] whole() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ((SF2Soundbank) ImpulseBank.bank().soundbank()).save(bytes);
        return bytes.toByteArray();
    }

    @Test
    void readsASoundFontFile() throws IOException {
        Path file = Files.write(folder.resolve("mine.sf2"), whole());
        Bank bank = Bank.read(file);
        assertThat(bank.name()).isEqualTo("mine.sf2");
        try (NoteStream stream = NoteStream.open(bank)) {
            float[] samples = new float[NoteStream.CHANNELS * 1000];
            stream.on(100, 10, -1, 38, 100);
            stream.read(samples, 1000);
            assertThat(Onsets.of(samples)).containsExactly(100L);
        }
    }

    @ParameterizedTest(name = "{0} per cent of it")
    @ValueSource(ints = {0, 1, 10, 50, 90, 99})
    void aFileCutShortIsRefusedInOneLine(int percent) throws IOException {
        byte[] whole = whole();
        Path file =
                Files.write(
                        folder.resolve("cut.sf2"),
                        Arrays.copyOf(whole, whole.length * percent / 100));
        refused(file);
    }

    @Test
    void aFileOfAnotherKindIsRefusedInOneLine() throws IOException {
        refused(Files.writeString(folder.resolve("cut.sf2"), "RIFF is not enough ".repeat(50)));
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        Path file = folder.resolve("none.sf2");
        assertThatThrownBy(() -> Bank.read(file))
                .isInstanceOf(IOException.class)
                .hasMessage("sound bank %s: there is no such file", file);
    }

    private static void refused(Path file) {
        assertThatThrownBy(() -> Bank.read(file))
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith("sound bank " + file + ": ")
                .message()
                .doesNotContain("\n");
    }

    // XDG Base Directory Specification; the others are common practice on their systems, no source.
    @ParameterizedTest(name = "{0}, {1}={2}")
    @CsvSource({
        "Linux, XDG_CACHE_HOME, /var/c, /var/c/kitweft",
        "Linux, X, x, /home/me/.cache/kitweft",
        "Mac OS X, X, x, /home/me/Library/Caches/Kitweft",
        "Windows 11, LOCALAPPDATA, /local, /local/Kitweft"
    })
    void theBuiltInBankIsKeptWhereTheSystemKeepsSuchFiles(
            String system, String variable, String value, String folder) {
        assertThat(BuiltIn.folder(Map.of(variable, value), system, "/home/me"))
                .isEqualTo(Path.of(folder));
    }
}
