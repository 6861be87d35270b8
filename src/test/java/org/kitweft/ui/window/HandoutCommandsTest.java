package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.ui.lesson.LessonEdits;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class HandoutCommandsTest {
    @TempDir Path folder;

    private final SessionModel session = new SessionModel(Session.opening());
    private final List<String> told = new ArrayList<>();
    private final HandoutCommands handouts =
            new HandoutCommands(
                    session,
                    new FileDialogs(new JPanel(), ""),
                    Tasks.DIRECT,
                    new Notices() {
                        @Override
                        public void note(String line) {
                            told.add(line);
                        }

                        @Override
                        public void fault(String line) {
                            told.add("fault: " + line);
                        }
                    });

    @Test
    void aLessonBecomesAPdfDocument() throws IOException {
        session.edit("Add", LessonEdits.addGroove(session.session()));
        Path target = folder.resolve("lesson.pdf");
        handouts.pdf(target);
        assertThat(Files.readAllBytes(target))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
        assertThat(told).containsExactly("Written: " + target.toAbsolutePath());
    }

    @Test
    void aLessonWithoutItemsIsToldBeforeAnythingIsAsked() {
        handouts.pdf();
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).startsWith("fault: The lesson has no items yet");
    }
}
