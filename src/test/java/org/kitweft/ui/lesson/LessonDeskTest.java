package org.kitweft.ui.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.groove.Tempo;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class LessonDeskTest {
    @TempDir Path folder;
    private final SessionModel session = new SessionModel(Session.opening());
    private final LessonDesk desk = new LessonDesk(session);

    private void addGroove() {
        session.edit("Add", LessonEdits.addGroove(session.session()));
    }

    @Test
    void aNewWindowHasNothingToLose() {
        assertThat(desk.unsaved()).isFalse();
    }

    @Test
    void aGrooveComesBackFromTheFileAsItWas() throws IOException {
        addGroove();
        assertThat(desk.unsaved()).isTrue();
        Path file = folder.resolve("week.kitweft");
        desk.save(file, false);
        assertThat(desk.unsaved()).isFalse();

        SessionModel other = new SessionModel(Session.opening().typed("RRLL"));
        new LessonDesk(other).open(file);
        assertThat(other.session().recipe()).isEqualTo(session.recipe());
        assertThat(other.session().item()).isEqualTo(OptionalInt.of(0));
    }

    @Test
    void savingKeepsTheChangesOfTheOpenItem() throws IOException {
        addGroove();
        session.edit("Tempo", session.session().with(new Tempo(150)));
        assertThat(LessonEdits.hasChanges(session.session())).isTrue();
        desk.save(folder.resolve("a.kitweft"), false);
        assertThat(session.session().lesson().items().get(0).tempo()).isEqualTo(new Tempo(150));
    }

    @Test
    void anExistingFileIsNotReplacedUnasked() throws IOException {
        Path file = Files.writeString(folder.resolve("a.kitweft"), "mine");
        assertThatThrownBy(() -> desk.save(file, false))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(file).hasContent("mine");
    }

    @Test
    void aDamagedFileLeavesTheSessionAsItWas() throws IOException {
        addGroove();
        Session before = session.session();
        Path file = Files.writeString(folder.resolve("half.kitweft"), "{\"format\":\"kitweft-les");
        assertThatThrownBy(() -> desk.open(file)).hasMessageContaining("half.kitweft");
        assertThat(session.session()).isEqualTo(before);
    }

    @Test
    void theOpenItemIsFollowedWhenItemsMoveAndGo() {
        addGroove();
        addGroove();
        addGroove();
        Session three = session.session();
        assertThat(three.lesson().items())
                .extracting(LessonItem::title)
                .containsExactly("Groove 1", "Groove 2", "Groove 3");
        Session up = LessonEdits.move(three, 2, -1);
        assertThat(up.item()).isEqualTo(OptionalInt.of(1));
        assertThat(LessonEdits.remove(up, 0).item()).isEqualTo(OptionalInt.of(0));
        assertThat(LessonEdits.remove(up, 1).item()).isEmpty();
        assertThat(LessonEdits.move(three, 2, 1)).isEqualTo(three);
    }
}
