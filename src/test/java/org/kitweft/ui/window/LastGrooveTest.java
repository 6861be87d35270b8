package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.session.Session;

class LastGrooveTest {
    @TempDir private Path folder;

    private Path settings() {
        return folder.resolve("window.properties");
    }

    @Test
    void theFirstStartFindsNone() throws IOException {
        assertThat(LastGroove.read(settings())).isEmpty();
    }

    @Test
    void whatWasInTheGridIsThereAgain() throws IOException {
        Session session =
                Session.opening().typed("RRLL RLRL KKLL").with(new Tempo(77)).with(Role.FILL);
        LastGroove.write(settings(), session);
        Session again = LastGroove.read(settings()).orElseThrow();
        assertThat(again.recipe()).isEqualTo(session.recipe());
        assertThat(again.tempo()).isEqualTo(session.tempo());
        assertThat(again.role()).isEqualTo(Role.FILL);
        assertThat(again.lesson().items()).isEmpty();
    }

    @Test
    void aFileCutShortIsNamedInOneLine() throws IOException {
        LastGroove.write(settings(), Session.opening());
        Path file = folder.resolve("last-groove.json");
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.length() / 2));
        assertThatThrownBy(() -> LastGroove.read(settings()))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("last-groove.json")
                .hasMessageNotContaining("\n");
    }
}
