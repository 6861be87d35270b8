package org.kitweft.ui.sticking;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.StickingFamily;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Paints;

/** All stickings of a length, filtered as a teacher would. */
final class CataloguePane extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int LONGEST = 16;
    private static final int MOST_SHOWN = 2000;
    private static final String ANY = "anything";

    private final transient Tasks tasks;
    private final JSpinner strokes = new JSpinner(new SpinnerNumberModel(8, 1, LONGEST, 1));
    private final JTextField start = new JTextField(6);
    private final JSpinner run = new JSpinner(new SpinnerNumberModel(0, 0, LONGEST, 1));
    private final JComboBox<String> family = new JComboBox<>();
    private final JCheckBox leadChanges = new JCheckBox("The lead changes over on repeat");
    private final JCheckBox oneOfEachCycle = new JCheckBox("One of each cycle");
    private final JCheckBox sameSwapped = new JCheckBox("Same after swapping hands");
    private final DefaultListModel<Sticking> model = new DefaultListModel<>();
    private final JLabel found = new JLabel(" ");
    private transient Tasks.Running running = () -> {};

    CataloguePane(Tasks tasks, Consumer<Sticking> chosen) {
        super(new MigLayout("insets 10, wrap 2, gapx 14", "[][grow,fill]", "[][][][][][][]push[]"));
        this.tasks = tasks;
        family.addItem(ANY);
        for (StickingFamily one : StickingFamily.values()) {
            family.addItem(one.id().replace('-', ' '));
        }
        JList<Sticking> list = new JList<>(model);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        Paints.type(list, 110, false);
        list.getAccessibleContext().setAccessibleName("Stickings");
        StickingChooser.onTake(list, chosen);
        JPanel filters = new JPanel(new MigLayout("insets 0, wrap 2", "[][grow,fill]"));
        field(filters, "Strokes", strokes);
        field(filters, "Starts with", start);
        field(filters, "Longest run (0: any)", run);
        field(filters, "Made of", family);
        filters.add(leadChanges, "span 2");
        filters.add(oneOfEachCycle, "span 2");
        filters.add(sameSwapped, "span 2");
        add(filters, "spany 7, top");
        add(new JScrollPane(list), "spany 7, grow, pushy, wmin 260, hmin 260");
        add(found, "span 2");
        strokes.addChangeListener(e -> search());
        run.addChangeListener(e -> search());
        start.getDocument().addDocumentListener(StickingChooser.onChange(this::search));
        family.addActionListener(e -> search());
        for (JCheckBox box : List.of(leadChanges, oneOfEachCycle, sameSwapped)) {
            box.addActionListener(e -> search());
        }
        search();
    }

    private static void field(JPanel panel, String text, JComponent target) {
        JLabel label = new JLabel(text);
        label.setLabelFor(target);
        target.getAccessibleContext().setAccessibleName(text);
        panel.add(label);
        panel.add(target);
    }

    private void search() {
        running.stop();
        StickingFilter filter;
        try {
            filter = filter();
        } catch (IllegalArgumentException e) {
            found.setText(e.getMessage());
            return;
        }
        running =
                tasks.run(
                        "",
                        progress ->
                                filter.matches()
                                        .takeWhile(any -> !progress.stopped())
                                        .limit(MOST_SHOWN + 1)
                                        .toList(),
                        this::show,
                        failure -> found.setText(failure.getMessage()));
    }

    private StickingFilter filter() {
        int chosen = family.getSelectedIndex();
        return new StickingFilter(
                (Integer) strokes.getValue(),
                StickingFilter.start(start.getText()),
                (Integer) run.getValue(),
                chosen <= 0 ? Optional.empty() : Optional.of(StickingFamily.values()[chosen - 1]),
                leadChanges.isSelected(),
                oneOfEachCycle.isSelected(),
                sameSwapped.isSelected());
    }

    private void show(List<Sticking> stickings) {
        model.clear();
        model.addAll(stickings.subList(0, Math.min(MOST_SHOWN, stickings.size())));
        found.setText(
                stickings.size() > MOST_SHOWN
                        ? String.format(
                                Locale.ENGLISH, "More than %,d; these are the first", MOST_SHOWN)
                        : stickings.size() == 1
                                ? "One sticking"
                                : String.format(Locale.ENGLISH, "%,d stickings", stickings.size()));
    }
}
