package org.kitweft.ui.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBoxMenuItem;
import org.junit.jupiter.api.Test;
import org.kitweft.score.model.NotationOptions;

class StaffMenuTest {

    @Test
    void eachItemChangesOneThing() {
        List<NotationOptions> chosen = new ArrayList<>();
        StaffMenu menu = new StaffMenu(NotationOptions.DEFAULT, chosen::add);
        for (int i = 0; i < menu.getComponentCount(); i++) {
            ((JCheckBoxMenuItem) menu.getComponent(i)).doClick(0);
        }
        NotationOptions first = NotationOptions.DEFAULT;
        assertThat(chosen)
                .containsExactly(
                        first.withSticking(false),
                        first.withSticking(false).withCounting(true),
                        first.withSticking(false).withCounting(true).withOneVoice(true),
                        first.withSticking(false)
                                .withCounting(true)
                                .withOneVoice(true)
                                .withFoldRepeats(true));
    }
}
