package org.kitweft.ui.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.util.Arrays;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.explore.ListKeys;
import org.kitweft.ui.theme.Paints;

/** Keys at a glance, care for ears and joints, and about the program; made when asked for. */
final class HelpDialogs {
    /** Signs of a line; what is longer goes on in the next, so that all columns are in sight. */
    private static final int LONG = 32;

    private final Window owner;
    private final CommandTexts texts = new CommandTexts();

    HelpDialogs(Window owner) {
        this.owner = owner;
    }

    void keys() {
        JScrollPane scroll = new JScrollPane(keyTable());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        show("Keys", scroll);
    }

    /** All keys: those of the menus, and those that parts of the window have. */
    JPanel keyTable() {
        JPanel panel =
                new JPanel(
                        new MigLayout(
                                "insets 14 18 14 18, gapx 18, gapy 3, wrap 4",
                                "[][]40[][]",
                                "[top]"));
        JPanel left = column();
        JPanel right = column();
        for (Command.Group group : Command.Group.values()) {
            JPanel target = group.ordinal() < 3 ? left : right;
            List<Command> commands = withKeys(group);
            if (!commands.isEmpty()) {
                heading(target, texts.text(group));
            }
            for (Command command : commands) {
                row(
                        target,
                        CommandTexts.words(texts.key(command).orElseThrow()),
                        texts.text(command).replace("…", ""));
            }
        }
        JPanel kit = column();
        heading(kit, "On the kit");
        row(kit, "R L K H B, or 1 to 5", "take a letter up");
        row(kit, "Arrows", "carry it to a surface");
        row(kit, "Enter", "put it down");
        row(kit, "Shift+Enter", "add a place to its path");
        row(kit, "S", "next sound of the surface");
        row(kit, "T", "tacet, or not");
        row(kit, "O", "hand over to the next limb");
        row(kit, "A, G, P", "place for accents, ghosts, all");
        row(kit, "Delete", "remove the last place");
        heading(kit, "In the grid");
        row(kit, "Arrows", "move");
        row(kit, "Enter", "plain, accent, ghost in turn");
        row(kit, "A, G, P", "accent, ghost, plain");
        row(kit, "Alt+Up, Alt+Down", "move the stroke to another surface");
        row(kit, "I", "pin the stroke, or let it go");
        row(kit, "Shift+I", "pin it on the surface under the cursor");
        row(kit, "Delete", "bring the stroke back");
        heading(kit, "In possibilities, search and ladder");
        for (ListKeys.Told told : ListKeys.TOLD) {
            row(kit, told.key(), told.text());
        }
        heading(left, "In the lesson");
        row(left, "Enter", "open the item or phrase");
        row(left, "Alt+Up, Alt+Down", "move it");
        heading(left, "On the phrase");
        row(left, "M, A", "make one of the sticking, add the groove");
        row(left, "Left, Right", "choose a section");
        row(left, "Alt+Left, Alt+Right", "move it");
        row(left, "+, -", "a bar more, a bar less");
        row(left, "T, F, P", "time, fill, punch");
        row(left, "Enter", "open it in the grid, or close it");
        row(left, "L", "play it alone, or all again");
        row(left, "Delete", "take it out");
        panel.setLayout(new MigLayout("insets 12 16 12 16, gapx 22", "[][][]", "[top]"));
        panel.add(left);
        panel.add(right);
        panel.add(kit);
        return panel;
    }

    /** The commands of a menu that have a key; of some menus none has. */
    private static List<Command> withKeys(Command.Group group) {
        return Arrays.stream(Command.values())
                .filter(command -> command.group() == group && command.key().isPresent())
                .toList();
    }

    private static JPanel column() {
        return new JPanel(new MigLayout("insets 0, gapx 14, gapy 2, wrap 2", "[right][]"));
    }

    private static void heading(JPanel column, String text) {
        JLabel label = new JLabel(text);
        Paints.type(label, 110, true);
        column.add(label, "span 2, left, gaptop 8");
    }

    private static void row(JPanel column, String key, String text) {
        JLabel label = new JLabel(key);
        Paints.type(label, 100, true);
        column.add(label);
        int cut = text.length() > LONG ? text.lastIndexOf(' ', LONG) : text.length();
        column.add(new JLabel(text.substring(0, cut)));
        if (cut < text.length()) {
            column.add(new JLabel(text.substring(cut + 1)), "skip");
        }
    }

    void care() {
        show("Care for ears and joints", text(CareNotes.text()));
    }

    void about() {
        String version = HelpDialogs.class.getPackage().getImplementationVersion();
        show(
                "About Kitweft",
                text(
                        """
                        Kitweft %s

                        Takes a sticking, puts it on the surfaces of a kit, and lets teacher and \
                        learner see, hear, count, choose and take home the grooves that come of it.

                        Apache License 2.0. Java %s.
                        """
                                .formatted(
                                        version == null ? "" : version,
                                        System.getProperty("java.version"))));
    }

    private static JComponent text(String text) {
        JTextArea area = new JTextArea(text);
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        Paints.type(area, 105, false);
        area.setBorder(BorderFactory.createEmptyBorder(16, 20, 10, 20));
        area.setCaretPosition(0);
        JScrollPane scroll = new JScrollPane(area);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setPreferredSize(UIScale.scale(new Dimension(560, 380)));
        return scroll;
    }

    private void show(String title, JComponent content) {
        JDialog dialog = new JDialog(owner, title);
        dialog.add(content);
        JButton close = new JButton("Close");
        close.addActionListener(e -> dialog.dispose());
        JPanel buttons = new JPanel(new MigLayout("insets 6 12 10 12", "[grow][]"));
        buttons.add(new JLabel());
        buttons.add(close);
        dialog.add(buttons, BorderLayout.SOUTH);
        dialog.getRootPane().setDefaultButton(close);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        Dimension most = dialog.getToolkit().getScreenSize();
        dialog.setSize(
                Math.min(dialog.getWidth(), most.width * 19 / 20),
                Math.min(dialog.getHeight(), most.height * 9 / 10));
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
        close.requestFocusInWindow();
    }
}
