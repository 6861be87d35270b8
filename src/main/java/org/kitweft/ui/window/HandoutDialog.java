package org.kitweft.ui.window;

import java.awt.BorderLayout;
import java.awt.Dialog.ModalityType;
import java.awt.Window;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Shows the form of the handout; Enter uses it, Escape leaves all as it was. */
final class HandoutDialog {
    private HandoutDialog() {}

    static JDialog of(Window owner, HandoutForm form, Consumer<HandoutForm> use) {
        JDialog dialog = new JDialog(owner, "Handout page", ModalityType.APPLICATION_MODAL);
        dialog.add(form);
        JButton done = new JButton("Use for handouts");
        done.setMnemonic('U');
        done.setToolTipText("Every handout looks so from now on");
        done.addActionListener(
                e -> {
                    dialog.dispose();
                    use.accept(form);
                });
        JButton cancel = new JButton("Cancel");
        cancel.addActionListener(e -> dialog.dispose());
        JPanel buttons = new JPanel(new MigLayout("insets 8 18 14 18", "[grow][][]"));
        buttons.add(new JLabel());
        buttons.add(done);
        buttons.add(cancel);
        dialog.add(buttons, BorderLayout.SOUTH);
        dialog.getRootPane().setDefaultButton(done);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
        return dialog;
    }
}
