package org.kitweft.ui.staff;

import java.util.function.Consumer;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JPopupMenu;
import org.kitweft.score.model.NotationOptions;

/** What the staff in the window shows beside the notes; by mouse, or by the menu key. */
final class StaffMenu extends JPopupMenu {
    private static final long serialVersionUID = 1;

    private final JCheckBoxMenuItem sticking = new JCheckBoxMenuItem("Sticking letters");
    private final JCheckBoxMenuItem counting = new JCheckBoxMenuItem("Counting line");
    private final JCheckBoxMenuItem oneVoice = new JCheckBoxMenuItem("One voice");
    private final JCheckBoxMenuItem repeats = new JCheckBoxMenuItem("Repeat signs");

    StaffMenu(NotationOptions first, Consumer<NotationOptions> chosen) {
        sticking.setSelected(first.sticking());
        counting.setSelected(first.counting());
        oneVoice.setSelected(first.oneVoice());
        repeats.setSelected(first.foldRepeats());
        item(sticking, 'S', "R and L under the notes", first, chosen);
        item(counting, 'C', "1 e & a under the notes", first, chosen);
        item(oneVoice, 'O', "Hands and feet in one voice, all stems up", first, chosen);
        item(repeats, 'R', "Bars that come round are written once", first, chosen);
    }

    private void item(
            JCheckBoxMenuItem item,
            char mnemonic,
            String tip,
            NotationOptions first,
            Consumer<NotationOptions> chosen) {
        item.setMnemonic(mnemonic);
        item.setToolTipText(tip);
        item.addActionListener(e -> chosen.accept(options(first)));
        add(item);
    }

    private NotationOptions options(NotationOptions first) {
        return first.withSticking(sticking.isSelected())
                .withCounting(counting.isSelected())
                .withOneVoice(oneVoice.isSelected())
                .withFoldRepeats(repeats.isSelected());
    }
}
