package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final long SECOND = 1_000_000_000L;

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private long now = 5 * SECOND;

    private Progress progress(boolean watched) {
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        return new Progress(
                new Terminal(stream, stream, StandardCharsets.UTF_8, watched), () -> now);
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void shortWorkSaysNothing() {
        try (Progress progress = progress(true)) {
            progress.progress(1, 2);
            now += SECOND - 1;
            progress.progress(2, 2);
        }
        assertThat(said()).isEmpty();
    }

    @Test
    void longWorkWritesOneLineOverAndWipesItOut() {
        try (Progress progress = progress(true)) {
            now += SECOND;
            progress.progress(1500, 20_000);
            progress.progress(1600, 20_000);
            assertThat(said()).isEqualTo("\rlooked at 1,500 of 20,000; Ctrl+C gives up");
            now += SECOND;
            progress.progress(3000, 20_000);
        }
        assertThat(said().split("\r"))
                .containsExactly(
                        "",
                        "looked at 1,500 of 20,000; Ctrl+C gives up",
                        "looked at 3,000 of 20,000; Ctrl+C gives up",
                        " ".repeat(42));
        assertThat(said()).endsWith("\r").doesNotContain("\n");
    }

    @Test
    void whereNoPersonLooksItIsSilent() {
        try (Progress progress = progress(false)) {
            now += 60 * SECOND;
            progress.progress(1, 2);
        }
        assertThat(said()).isEmpty();
    }
}
