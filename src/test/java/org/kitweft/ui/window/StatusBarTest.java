package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import javax.swing.Action;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Theme;

class StatusBarTest {
    private StatusBar status;

    @BeforeAll
    static void theme() {
        Theme.LIGHT.install(100);
    }

    @BeforeEach
    void begin() {
        status = new StatusBar();
    }

    @Test
    void aFaultGoesWithTheNextEdit() {
        SessionModel session = new SessionModel(Session.opening());
        session.addListener(status::settle);
        status.fault("cannot save lesson.json: you may not read or write there");
        session.edit("Tempo", session.session().with(new Tempo(71)));
        assertThat(status.text()).isBlank();
    }

    @Test
    void aFaultGoesWithTheNextCommandButNotTheFaultOfThatCommand() {
        Commands commands = new Commands(status::settle);
        commands.on(Command.KEYS, () -> {});
        commands.on(Command.CARE, () -> status.fault("the second"));
        status.fault("the first");
        give(commands.action(Command.KEYS));
        assertThat(status.text()).isBlank();
        give(commands.action(Command.CARE));
        assertThat(status.text()).isEqualTo("⚠ the second");
    }

    private static void give(Action action) {
        action.actionPerformed(new ActionEvent(action, ActionEvent.ACTION_PERFORMED, ""));
    }

    @Test
    void whatSomebodySaysAboutAnEditStandsAfterIt() {
        status.fault("an older fault");
        status.settle();
        status.note("Kit: timpani");
        assertThat(status.text()).isEqualTo("Kit: timpani");
        status.hint("12 of 30 variations strike here");
        assertThat(status.text()).as("a hint covers no message").isEqualTo("Kit: timpani");
        status.settle();
        assertThat(status.text()).as("a note stays until another").isEqualTo("Kit: timpani");
        status.hint("12 of 30 variations strike here");
        assertThat(status.text()).isEqualTo("12 of 30 variations strike here");
        status.hint("10 of 30 variations strike here");
        assertThat(status.text()).isEqualTo("10 of 30 variations strike here");
    }

    @Test
    void noHintCoversAFault() {
        status.fault("cannot write groove.mid: the disk is full");
        status.hint("12 of 30 variations strike here");
        assertThat(status.text()).contains("the disk is full");
        status.note("Written: groove.mid");
        assertThat(status.text()).isEqualTo("Written: groove.mid");
    }
}
