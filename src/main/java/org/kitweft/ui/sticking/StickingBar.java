package org.kitweft.ui.sticking;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Paints;

/** The sticking and the time it is laid on: steps, meter, what happens at the bar line, bars. */
public final class StickingBar extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int LEAST_FIELD = 240;
    private static final String AS_NEEDED = "as needed";

    private final transient SessionModel session;
    private final transient Notices notices;
    private final StickingField field;
    private final JButton choose = new JButton("Choose…");
    private final JComboBox<Integer> steps =
            new JComboBox<>(Grid.stepsPerBeatChoices().toArray(new Integer[0]));
    private final JComboBox<String> meter =
            new JComboBox<>(
                    new String[] {
                        "4/4", "3/4", "2/4", "5/4", "7/4", "6/8", "9/8", "12/8", "5/8", "7/8"
                    });
    private final JComboBox<String> bars =
            new JComboBox<>(new String[] {AS_NEEDED, "1", "2", "4", "8", "12", "16"});
    private final JCheckBox overTheBar = new JCheckBox("Over the bar");
    private final transient List<JComponent> details = new ArrayList<>();
    private final JLabel stepsLabel;
    private boolean following;
    private boolean broken;

    /**
     * A bar for the session.
     *
     * @param chooser opens the tables of stickings
     */
    public StickingBar(SessionModel session, Notices notices, Runnable chooser) {
        super(
                new MigLayout(
                        "insets 8 10 2 10, gap 6, hidemode 3",
                        "[][grow,fill]8[]16[][]10[][]10[][]10[]",
                        "[top]"));
        this.session = session;
        this.notices = notices;
        this.field = new StickingField(session);
        JLabel title = new JLabel("Sticking");
        title.setLabelFor(field.field());
        title.setDisplayedMnemonic('I');
        Paints.type(title, 100, true);
        add(title, "gaptop 7");
        add(field, "growx, wmin 200");
        choose.setToolTipText("Rudiments, and all stickings of a length");
        choose.addActionListener(e -> chooser.run());
        add(choose, "gaptop 3");
        details.add(choose);
        stepsLabel = detail("Steps", steps, "gaptop 3");
        meter.setEditable(true);
        detail("Meter", meter, "gaptop 3, w 80!");
        bars.setEditable(true);
        detail("Bars", bars, "gaptop 3, w 122!");
        overTheBar.setToolTipText(
                "Run over the bar line until sticking and bar meet again, instead of starting"
                        + " again with each bar");
        add(overTheBar, "gaptop 5");
        details.add(overTheBar);
        steps.setRenderer(new StepRenderer());
        addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        breakIfNarrow();
                    }
                });
        listen();
        session.addListener(this::follow);
        follow();
    }

    /** Where not all fits into one row, only the chooser stays beside the field. */
    private void breakIfNarrow() {
        int needed = UIScale.scale(LEAST_FIELD);
        for (Component component : getComponents()) {
            needed +=
                    component == field || !component.isVisible()
                            ? 0
                            : component.getPreferredSize().width + UIScale.scale(10);
        }
        boolean narrow = needed > getWidth();
        if (narrow != broken && getLayout() instanceof MigLayout layout) {
            broken = narrow;
            layout.setComponentConstraints(
                    field, narrow ? "growx, pushx, wmin 200, span, split 2" : "growx, wmin 200");
            layout.setComponentConstraints(choose, narrow ? "gaptop 3, wrap" : "gaptop 3");
            layout.setComponentConstraints(
                    stepsLabel, narrow ? "gaptop 7, span, split" : "gaptop 7");
            revalidate();
        }
    }

    private JLabel detail(String text, JComponent target, String constraints) {
        JLabel label = new JLabel(text);
        label.setLabelFor(target);
        target.getAccessibleContext().setAccessibleName(text);
        add(label, "gaptop 7");
        add(target, constraints);
        details.add(label);
        details.add(target);
        return label;
    }

    private void listen() {
        steps.addActionListener(
                e -> grid("Steps", g -> g.withStepsPerBeat((Integer) steps.getSelectedItem())));
        meter.addActionListener(
                e ->
                        grid(
                                "Meter",
                                g -> g.withMeter(Meter.parse((String) meter.getSelectedItem()))));
        overTheBar.addActionListener(
                e -> grid("Over the bar", g -> g.withOverTheBar(overTheBar.isSelected())));
        bars.addActionListener(e -> bars(String.valueOf(bars.getSelectedItem()).strip()));
    }

    private void grid(String name, UnaryOperator<Grid> change) {
        if (following) {
            return;
        }
        try {
            session.edit(name, session.recipe().with(change.apply(session.recipe().grid())));
        } catch (IllegalArgumentException e) {
            refuse(e);
        }
    }

    private void bars(String text) {
        if (following) {
            return;
        }
        try {
            session.edit("Bars", session.recipe().withBars(parsed(text)));
        } catch (IllegalArgumentException e) {
            refuse(e);
        }
    }

    private static OptionalInt parsed(String text) {
        if (text.isEmpty() || text.equals(AS_NEEDED)) {
            return OptionalInt.empty();
        }
        if (!text.matches("\\d{1,6}")) {
            throw new IllegalArgumentException(
                    "bars \"%s\": expected a number from 1 to %d, or \"%s\""
                            .formatted(text, Groove.MAX_BARS, AS_NEEDED));
        }
        return OptionalInt.of(Integer.parseInt(text));
    }

    private void refuse(IllegalArgumentException fault) {
        notices.fault(fault.getMessage());
        follow();
    }

    private void follow() {
        following = true;
        try {
            Grid grid = session.recipe().grid();
            steps.setSelectedItem(grid.stepsPerBeat());
            meter.setSelectedItem(grid.meter().text());
            overTheBar.setSelected(grid.overTheBar());
            OptionalInt wanted = session.recipe().bars();
            bars.setSelectedItem(
                    wanted.isPresent() ? Integer.toString(wanted.getAsInt()) : AS_NEEDED);
        } finally {
            following = false;
        }
    }

    /** The text field. */
    public JTextField focusTarget() {
        return field.field();
    }

    /** Shows the field alone, or all. */
    public void showDetails(boolean shown) {
        details.forEach(detail -> detail.setVisible(shown));
    }

    /** Steps by name. */
    private final class StepRenderer extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            String name =
                    value instanceof Integer count
                            ? StepNames.of(session.recipe().grid().meter(), count)
                            : String.valueOf(value);
            return super.getListCellRendererComponent(list, name, index, selected, focus);
        }
    }
}
