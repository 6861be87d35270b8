package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Theme;

class KitCommandsTest {
    @Test
    void aKitOfBarsIsNotMirroredAndSaysWhy() {
        SessionModel session =
                new SessionModel(Session.opening().on(BuiltInKits.load("vibraphone")));
        Session before = session.session();
        Theme.LIGHT.install(100);
        StatusBar status = new StatusBar();
        KitCommands kits =
                new KitCommands(session, new FileDialogs(new JPanel(), ""), Tasks.DIRECT, status);
        kits.mirrorKit();
        assertThat(session.session()).isEqualTo(before);
        assertThat(status.text())
                .isEqualTo(
                        "The kit is not mirrored. Bars lie from low at the left to high at the"
                                + " right for every player.");
        kits.toggleLeftHanded();
        assertThat(kits.isLeftHanded()).isTrue();
        assertThat(status.text()).contains("left hand leads").contains("for every player");
    }

    @Test
    void whatAnotherKitDoesNotHaveIsNamedOnce() {
        Recipe recipe = OpeningGroove.recipe();
        assertThat(KitCommands.lost(recipe, BuiltInKits.load("marimba")))
                .containsExactly("hi-hat.closed", "bass-drum.head", "snare.head");
        assertThat(KitCommands.lost(recipe, BuiltInKits.load("extended"))).isEmpty();
    }
}
