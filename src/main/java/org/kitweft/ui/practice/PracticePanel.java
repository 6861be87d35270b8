package org.kitweft.ui.practice;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.PracticeChoices;
import org.kitweft.ui.session.PracticeChoices.Way;
import org.kitweft.ui.session.SessionModel;

/** Tempo trainer, drop-outs, a loop of some bars, half and double time. */
public final class PracticePanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final String CARE =
            "Raise the tempo only while everything stays loose, pause every half hour at the"
                    + " latest, stop on pain, tingling or numbness. Local rules and a clinician come"
                    + " first.";

    private final transient PracticeModel model;
    private final transient Map<Way, JRadioButton> ways = new EnumMap<>(Way.class);
    private final JSpinner rise = spinner(1, PracticeChoices.MOST_RISE);
    private final JSpinner ceiling = spinner(Tempo.SLOWEST, Tempo.FASTEST);
    private final JSpinner loopsEach = spinner(1, PracticeChoices.MOST_LOOPS);
    private final JTextField steps = new JTextField(16);
    private final JButton lesson = new JButton("From the lesson");
    private final JCheckBox dropOut = new JCheckBox("Every other loop silent");
    private final JCheckBox cut = new JCheckBox("Only bars");
    private final JSpinner from = spinner(1, 1);
    private final JSpinner to = spinner(1, 1);
    private final JComboBox<Feel> feel = new JComboBox<>(Feel.values());
    private final JLabel now = new JLabel(" ");
    private final JLabel ahead = new JLabel(" ");
    private boolean following;

    /** A panel for the session and its player. */
    public PracticePanel(SessionModel session, PlayModel play) {
        super(new MigLayout("insets 8 12 8 12, gapy 6, wrap 2", "[][grow,left]"));
        this.model = new PracticeModel(session, play);
        fill();
        listen();
        model.addListener(this::follow);
        follow();
    }

    private static JSpinner spinner(int least, int most) {
        return new JSpinner(new SpinnerNumberModel(least, least, most, 1));
    }

    private void fill() {
        way(Way.STEADY, "Steady", 'y', "The tempo stays");
        way(Way.RISE, "Rise by", 'R', "The tempo rises from that at the foot of the window");
        way(Way.STEPS, "Steps", 'S', "The tempo goes through steps, in playing order");
        tip(rise, "Rise", "Beats a minute by which the tempo rises, 1 to 50");
        tip(ceiling, "Ceiling", "The fastest it rises to, in beats a minute, 20 to 400");
        tip(loopsEach, "Loops at each tempo", "Loops before the next tempo, 1 to 100");
        tip(steps, "Tempo steps", "Beats a minute one after the other, as in 60 66 72; Enter");
        lesson.setMnemonic('l');
        tip(
                dropOut,
                "Every other loop silent",
                "Nothing sounds in it, not even the click: does the pulse hold?");
        dropOut.setMnemonic('o');
        tip(cut, "Only bars", "Loop some bars of what plays");
        cut.setMnemonic('b');
        tip(from, "First bar", "The first bar that is played");
        tip(to, "Last bar", "The last bar that is played");
        tip(
                feel,
                "Drums",
                "Half time: every stroke at twice its distance, against the same beat; double time:"
                        + " at half of it");
        feel.setRenderer(new FeelRenderer());

        add(new JLabel("Tempo"));
        add(
                row(
                        ways.get(Way.STEADY),
                        gap(),
                        ways.get(Way.RISE),
                        rise,
                        label("up to", ceiling),
                        ceiling,
                        gap(),
                        ways.get(Way.STEPS),
                        steps,
                        lesson));
        add(new JLabel("Loops"));
        add(row(loopsEach, new JLabel("at each tempo"), gap(), dropOut));
        add(new JLabel("Play"));
        add(row(cut, from, label("to", to), to, gap(), label("Drums", feel), feel));
        now.putClientProperty("FlatLaf.style", "font: bold 150%; foreground: $Kitweft.accent");
        ahead.putClientProperty("FlatLaf.style", "foreground: $Kitweft.quiet");
        add(row(now, ahead), "span 2");
        JLabel care = new JLabel(CARE);
        care.putClientProperty("FlatLaf.style", "foreground: $Kitweft.quiet");
        add(care, "span 2, wmin 0");
    }

    private void way(Way way, String text, char mnemonic, String tip) {
        JRadioButton button = new JRadioButton(text);
        button.setMnemonic(mnemonic);
        button.setToolTipText(tip);
        ways.put(way, button);
    }

    private static void tip(JComponent component, String name, String tip) {
        component.setToolTipText(tip);
        component.getAccessibleContext().setAccessibleName(name);
    }

    private static JLabel label(String text, JComponent target) {
        JLabel label = new JLabel(text);
        label.setLabelFor(target);
        return label;
    }

    private static JLabel gap() {
        return new JLabel("   ");
    }

    private static JPanel row(JComponent... parts) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6"));
        row.setOpaque(false);
        for (JComponent part : parts) {
            row.add(part);
        }
        return row;
    }

    private void listen() {
        ButtonGroup group = new ButtonGroup();
        ways.forEach(
                (way, button) -> {
                    group.add(button);
                    button.addActionListener(e -> model.change(c -> c.with(way)));
                });
        edit(rise, value -> model.turn("Rise", c -> c.withRise(value).with(Way.RISE)));
        edit(
                ceiling,
                value ->
                        model.turn("Ceiling", c -> c.withCeiling(new Tempo(value)).with(Way.RISE)));
        edit(loopsEach, value -> model.turn("Loops", c -> c.withLoopsEach(value)));
        edit(from, model::firstBar);
        edit(to, model::lastBar);
        steps.addActionListener(e -> typed());
        steps.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        model.typeSteps(steps.getText());
                    }
                });
        lesson.addActionListener(e -> model.useLessonSteps());
        dropOut.addActionListener(e -> model.change(c -> c.withDropOut(dropOut.isSelected())));
        cut.addActionListener(e -> model.cut(cut.isSelected()));
        feel.addActionListener(
                e -> {
                    if (!following && feel.getSelectedItem() instanceof Feel chosen) {
                        model.stretch(s -> s.with(chosen));
                    }
                });
    }

    private void typed() {
        model.typeSteps(steps.getText());
        if (model.fault().isEmpty()) {
            model.change(c -> c.with(Way.STEPS));
        }
    }

    private interface Turned {
        void to(int value);
    }

    private void edit(JSpinner spinner, Turned turned) {
        spinner.addChangeListener(
                e -> {
                    if (!following) {
                        turned.to((Integer) spinner.getValue());
                    }
                });
    }

    private void follow() {
        following = true;
        try {
            PracticeChoices choices = model.choices();
            ways.get(choices.way()).setSelected(true);
            rise.setValue(choices.rise());
            ceiling.setValue(choices.ceiling().beatsPerMinute());
            loopsEach.setValue(choices.loopsEach());
            loopsEach.setEnabled(choices.way() != Way.STEADY);
            String text = choices.steps().text();
            if (model.fault().isEmpty() && !steps.isFocusOwner() && !steps.getText().equals(text)) {
                steps.setText(text);
            }
            steps.putClientProperty(
                    "JComponent.outline", model.fault().isPresent() ? "error" : null);
            lesson.setEnabled(model.lessonSteps().isPresent());
            lesson.setToolTipText(
                    model.lessonSteps()
                            .map(s -> "The tempo steps of the lesson's groove: " + s.text())
                            .orElse("The groove of the lesson that is open has no tempo steps"));
            dropOut.setSelected(choices.dropOut());
            followBars();
            feel.setSelectedItem(model.stretch().feel());
            now.setText(model.now().isEmpty() ? " " : model.now());
            ahead.setText(model.fault().orElse(model.ahead()));
        } finally {
            following = false;
        }
    }

    private void followBars() {
        boolean isCut = model.stretch().isCut();
        cut.setSelected(isCut);
        range(from, model.bars(), model.firstBar());
        range(to, model.bars(), model.lastBar());
        from.setEnabled(isCut);
        to.setEnabled(isCut);
    }

    private static void range(JSpinner spinner, int most, int value) {
        SpinnerNumberModel numbers = (SpinnerNumberModel) spinner.getModel();
        numbers.setMaximum(most);
        numbers.setValue(value);
    }
}
