package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Tempo;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.score.page.Progress;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class StaffExportTest {
    @TempDir Path folder;

    private final StaffExport export =
            new StaffExport(
                    new SessionModel(Session.opening()).phrase(),
                    "Opening",
                    PlayedWith.at(new Tempo(90)));

    /** First bytes: ISO 32000 for PDF, PNG specification 5.2, zip's local file header. */
    @ParameterizedTest
    @CsvSource({
        "a.pdf, %PDF",
        "a.PDF, %PDF",
        "a.svg, <?xml",
        "a.png, \u0089PNG",
        "a.musicxml, <?xml",
        "a.mxl, PK"
    })
    void theEndingSaysOfWhichKindTheFileIs(String name, String start) throws IOException {
        Path file = folder.resolve(name);
        export.write(file, Progress.NONE);
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith(start);
    }

    @Test
    void aNameWithoutAKnownEndingGetsTheFirst() {
        assertThat(FileDialogs.withExtension(Path.of("a.tune"), StaffExport.ENDINGS))
                .isEqualTo(Path.of("a.tune.pdf"));
        assertThat(FileDialogs.withExtension(Path.of("a.MXL"), StaffExport.ENDINGS))
                .isEqualTo(Path.of("a.MXL"));
    }
}
