package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.kitweft.ui.theme.Theme;

class HelpDialogsTest {

    /** A menu without keys has no heading: headings are larger than what stands under them. */
    @Test
    void noHeadingOfTheKeysStandsAlone() {
        Theme.LIGHT.install(100);
        JPanel table = new HelpDialogs(null).keyTable();
        List<String> headings = new ArrayList<>();
        for (Component column : table.getComponents()) {
            Component[] labels = ((Container) column).getComponents();
            for (int i = 0; i < labels.length; i++) {
                if (isHeading(labels[i])) {
                    headings.add(((JLabel) labels[i]).getText());
                    assertThat(i + 1 < labels.length && !isHeading(labels[i + 1]))
                            .as("something stands under %s", headings)
                            .isTrue();
                }
            }
        }
        assertThat(headings).contains("File", "Play", "On the kit").doesNotContain("Kit");
    }

    private static boolean isHeading(Component label) {
        return label.getFont().getSize2D() > new JLabel().getFont().getSize2D();
    }
}
