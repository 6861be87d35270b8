package org.kitweft.ui.phrase;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JSpinner;
import javax.swing.JToggleButton;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Groove;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Role;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.theme.FlowWrap;
import org.kitweft.ui.theme.Paints;

/**
 * The phrase: what plays, how a phrase is made, its sections as a strip, and what can be done to
 * the chosen one.
 */
public final class PhrasePanel extends TabPanel {
    private static final long serialVersionUID = 1;

    private final transient PhraseModel model;
    private final transient Runnable keep;
    private final SectionStrip strip;
    private final JToggleButton groove = new JToggleButton("Groove");
    private final JToggleButton phrase = new JToggleButton("Phrase");
    private final JButton make = new JButton("One sticking, all three");
    private final JButton addGroove = new JButton("Add groove");
    private final JButton addItem = new JButton("Add item…");
    private final JButton keepIt = new JButton("Keep in lesson");
    private final JSpinner length = new JSpinner(spinner());
    private final JComboBox<Role> role = new JComboBox<>(Role.values());
    private final JSpinner bars = new JSpinner(spinner());
    private final JButton open = new JButton("Open in grid");
    private final JButton left = new JButton("Move left");
    private final JButton right = new JButton("Move right");
    private final JButton remove = new JButton("Remove");
    private final JButton from = new JButton("Play from here");
    private final JToggleButton loop = new JToggleButton("Only this");
    private final JLabel chosen = new JLabel();
    private boolean following;

    /**
     * A panel for a phrase.
     *
     * @param keep keeps the phrase in the lesson and shows it there
     */
    public PhrasePanel(PhraseModel model, Playhead playhead, Runnable keep) {
        super(new MigLayout("insets 8 10 8 10, gapy 8, wrap 1", "[grow,fill]", "[][][]"));
        this.model = model;
        this.keep = keep;
        strip = new SectionStrip(model, playhead);
        add(making());
        add(strip, "wmin 0");
        add(choosing());
        listen();
        model.addListener(this::follow);
        follow();
    }

    private static SpinnerNumberModel spinner() {
        return new SpinnerNumberModel(1, 1, Groove.MAX_BARS, 1);
    }

    private JPanel making() {
        JPanel row = new JPanel(new FlowWrap(UIScale.scale(10)));
        ButtonGroup either = new ButtonGroup();
        either.add(groove);
        either.add(phrase);
        groove.setToolTipText("The groove in the grid is what plays, on the staff and in files");
        phrase.setToolTipText("The phrase is what plays, on the staff and in files");
        row.add(group(heading("Play", groove), groove, phrase));
        make.setToolTipText(
                "Make a phrase of the sticking in the grid: bars of time, one of fill, one of"
                        + " punch (M on the strip)");
        addGroove.setToolTipText("The groove in the grid as one more section (A on the strip)");
        addItem.setToolTipText("The groove of an item of the lesson as one more section");
        make.setMnemonic('O');
        addGroove.setMnemonic('G');
        addItem.setMnemonic('D');
        keepIt.setMnemonic('L');
        row.add(group(heading("Make", make), make, addGroove, addItem));
        JPanel lengths = group(heading("Bars", length), length);
        length.setToolTipText("Bars of the whole phrase, 1 to %d".formatted(Groove.MAX_BARS));
        for (int usual : PhrasePlan.USUAL_BARS.stream().sorted().toList()) {
            JButton button = new JButton(Integer.toString(usual));
            button.putClientProperty("FlatLaf.style", "minimumWidth: 0");
            button.setToolTipText("A phrase of %d bars".formatted(usual));
            button.getAccessibleContext().setAccessibleName("%d bars".formatted(usual));
            button.addActionListener(
                    e -> {
                        model.length(usual);
                        model.session().seal();
                    });
            lengths.add(button);
        }
        row.add(lengths);
        keepIt.setToolTipText(
                "Keep phrase and band in the lesson, or keep the changes of the one opened from"
                        + " there");
        row.add(group(keepIt));
        return row;
    }

    private JPanel choosing() {
        JPanel row = new JPanel(new FlowWrap(UIScale.scale(10)));
        Paints.type(chosen, 100, true);
        role.setToolTipText("What the section is for (T, F, P on the strip)");
        role.setRenderer(new RoleNames());
        bars.setToolTipText("Bars of the section (plus and minus on the strip)");
        open.setToolTipText(
                "Show the section in the grid, where edits go into it (Enter on the strip)");
        left.setToolTipText("Earlier in the phrase (Alt and left on the strip)");
        right.setToolTipText("Later in the phrase (Alt and right on the strip)");
        remove.setToolTipText("Take the section out (Delete on the strip)");
        from.setToolTipText("Play from the start of the section to the end of the phrase");
        loop.setToolTipText("Play the section alone, or the whole phrase again (L on the strip)");
        open.setMnemonic('N');
        from.setMnemonic('Y');
        loop.setMnemonic('T');
        row.add(group(chosen));
        row.add(group(label("For", role), role, label("Bars", bars), bars));
        row.add(group(open, left, right, remove));
        row.add(group(from, loop));
        return row;
    }

    private static JPanel group(JComponent... parts) {
        JPanel group = new JPanel(new MigLayout("insets 0, gap 5"));
        group.setOpaque(false);
        for (JComponent part : parts) {
            group.add(part);
        }
        return group;
    }

    private static JLabel label(String text, JComponent target) {
        JLabel label = new JLabel(text);
        label.setLabelFor(target);
        target.getAccessibleContext().setAccessibleName(text);
        return label;
    }

    private static JLabel heading(String text, JComponent first) {
        JLabel label = new JLabel(text);
        Paints.type(label, 100, true);
        label.setLabelFor(first);
        label.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, UIScale.scale(2)));
        return label;
    }

    private void listen() {
        groove.addActionListener(e -> model.plays(false));
        phrase.addActionListener(e -> model.plays(true));
        make.addActionListener(e -> model.makeOfOne());
        addGroove.addActionListener(e -> model.addGroove());
        addItem.addActionListener(e -> offerItems());
        keepIt.addActionListener(e -> keep.run());
        length.addChangeListener(e -> changed(() -> model.length((Integer) length.getValue())));
        role.addActionListener(e -> changed(() -> model.role((Role) role.getSelectedItem())));
        bars.addChangeListener(
                e ->
                        changed(
                                () ->
                                        model.selected()
                                                .ifPresent(
                                                        i ->
                                                                model.barsOf(
                                                                        i,
                                                                        (Integer)
                                                                                bars.getValue()))));
        open.addActionListener(e -> model.toggleOpen());
        left.addActionListener(e -> model.move(-1));
        right.addActionListener(e -> model.move(1));
        remove.addActionListener(e -> model.remove());
        from.addActionListener(e -> model.playFrom());
        loop.addActionListener(e -> model.loop(loop.isSelected()));
    }

    private void changed(Runnable body) {
        if (!following) {
            body.run();
        }
    }

    private void offerItems() {
        JPopupMenu menu = new JPopupMenu();
        List<LessonItem> items = model.session().session().lesson().items();
        IntStream.range(0, items.size())
                .forEach(
                        i -> {
                            String title = items.get(i).title();
                            menu.add(
                                            "%d  %s"
                                                    .formatted(
                                                            i + 1,
                                                            title.isBlank()
                                                                    ? items.get(i)
                                                                            .recipe()
                                                                            .sticking()
                                                                            .text()
                                                                    : title))
                                    .addActionListener(e -> model.addItem(i));
                        });
        menu.show(addItem, 0, addItem.getHeight());
    }

    /** The component that takes the keys. */
    public JComponent focusTarget() {
        return strip;
    }

    private void follow() {
        following = true;
        try {
            groove.setSelected(!model.plays());
            phrase.setSelected(model.plays());
            boolean any = model.selected().isPresent();
            phrase.setEnabled(any);
            addItem.setEnabled(!model.session().session().lesson().items().isEmpty());
            keepIt.setEnabled(any);
            length.setValue(model.bars(true));
            for (JComponent control : List.of(role, bars, open, left, right, remove, from, loop)) {
                control.setEnabled(any);
            }
            chosen.setText(any ? "Section " + (model.selected().getAsInt() + 1) : "Section");
            if (any) {
                followChosen(model.selected().getAsInt());
            }
        } finally {
            following = false;
        }
    }

    private void followChosen(int index) {
        PlannedSection section = model.plan().orElseThrow().sections().get(index);
        role.setSelectedItem(section.role());
        bars.setValue(section.bars());
        boolean isOpen = model.open().equals(OptionalInt.of(index));
        open.setText(isOpen ? "Close in grid" : "Open in grid");
        left.setEnabled(index > 0);
        right.setEnabled(index < model.count() - 1);
        loop.setSelected(model.isLooped());
    }
}
