package org.kitweft.ui.sticking;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Window;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.kitweft.pattern.Rudiment;
import org.kitweft.pattern.Rudiments;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Keys;

/** The tables of stickings to choose from: the rudiments, and all stickings of a length. */
public final class StickingChooser {
    private final Window owner;
    private final Tasks tasks;
    private final Consumer<Sticking> chosen;

    /**
     * @param chosen gets each sticking that the user takes
     */
    public StickingChooser(Window owner, Tasks tasks, Consumer<Sticking> chosen) {
        this.owner = owner;
        this.tasks = tasks;
        this.chosen = chosen;
    }

    /** Makes the dialog. It does not block: one hears what one chooses and may choose again. */
    public JDialog dialog() {
        JDialog dialog = new JDialog(owner, "Choose a sticking");
        JTabbedPane tabs = new JTabbedPane();
        tabs.addTab("Rudiments", rudiments());
        tabs.addTab("All of a length", new CataloguePane(tasks, chosen));
        tabs.setMnemonicAt(0, 'R');
        tabs.setMnemonicAt(1, 'A');
        dialog.add(tabs);
        JButton close = new JButton("Close");
        close.addActionListener(e -> dialog.dispose());
        JPanel buttons = new JPanel(new MigLayout("insets 6 12 10 12", "[grow][]"));
        buttons.add(new JLabel("Enter or a double click takes a sticking over"));
        buttons.add(close);
        dialog.add(buttons, BorderLayout.SOUTH);
        Keys.bind(dialog.getRootPane(), "ESCAPE", dialog::dispose);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(),
                        javax.swing.KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
        return dialog;
    }

    private JPanel rudiments() {
        List<Rudiment> all = Rudiments.load().all();
        DefaultListModel<Rudiment> model = new DefaultListModel<>();
        all.forEach(model::addElement);
        JList<Rudiment> list = new JList<>(model);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(14);
        list.setCellRenderer(new RudimentRenderer());
        list.getAccessibleContext().setAccessibleName("Rudiments");
        JTextField search = new JTextField();
        search.putClientProperty("JTextField.placeholderText", "Search by name or number");
        search.getAccessibleContext().setAccessibleName("Search rudiments");
        search.getDocument()
                .addDocumentListener(
                        onChange(
                                () -> {
                                    model.clear();
                                    String wanted = search.getText().toLowerCase(Locale.ROOT);
                                    all.stream()
                                            .filter(r -> text(r).contains(wanted))
                                            .forEach(model::addElement);
                                }));
        onTake(list, rudiment -> chosen.accept(rudiment.sticking()));
        JPanel panel =
                new JPanel(new MigLayout("insets 10, wrap 1", "[grow,fill]", "[][grow,fill]"));
        panel.add(search);
        panel.add(new JScrollPane(list), "wmin 520");
        return panel;
    }

    private static String text(Rudiment rudiment) {
        return (rudiment.number() + " " + rudiment.name() + " " + rudiment.family())
                .toLowerCase(Locale.ROOT);
    }

    static DocumentListener onChange(Runnable body) {
        return new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                body.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                body.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // attributes only
            }
        };
    }

    /** Enter and double click take what is selected. */
    static <T> void onTake(JList<T> list, Consumer<T> body) {
        Runnable take =
                () -> {
                    if (list.getSelectedValue() != null) {
                        body.accept(list.getSelectedValue());
                    }
                };
        Keys.bind(list, "ENTER", take);
        list.addMouseListener(
                new java.awt.event.MouseAdapter() {
                    @Override
                    public void mouseClicked(java.awt.event.MouseEvent event) {
                        if (event.getClickCount() == 2) {
                            take.run();
                        }
                    }
                });
    }

    /** Number, name and sticking. */
    private static final class RudimentRenderer extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            Rudiment rudiment = (Rudiment) value;
            super.getListCellRendererComponent(
                    list,
                    "%d  %s    %s"
                            .formatted(
                                    rudiment.number(), rudiment.name(), rudiment.sticking().text()),
                    index,
                    selected,
                    focus);
            setBorder(BorderFactory.createEmptyBorder(3, 8, 3, 8));
            setToolTipText(rudiment.family() + ": " + rudiment.rhythm());
            return this;
        }
    }
}
