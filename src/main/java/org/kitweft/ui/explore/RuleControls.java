package org.kitweft.ui.explore;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/** The rules that variations must keep, as switches with their figures. */
final class RuleControls extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int MOST_CM = 300;
    private static final int MOST_SURFACES = 50;
    private static final String PINNING =
            "In the grid I pins the stroke under the cursor where it is, Shift+I on the surface"
                    + " under the cursor; the right mouse button offers both";

    private final transient SessionModel session;
    private final JCheckBox reach = new JCheckBox("Reach at most");
    private final JSpinner cm = new JSpinner(new SpinnerNumberModel(60, 0, MOST_CM, 5));
    private final JCheckBox atTempo = new JCheckBox("Possible at");
    private final JSpinner tempo =
            new JSpinner(new SpinnerNumberModel(100, Tempo.SLOWEST, Tempo.FASTEST, 5));
    private final JCheckBox noCrossing = new JCheckBox("No crossing");
    private final JCheckBox surfaces = new JCheckBox("Surfaces");
    private final JSpinner least = new JSpinner(new SpinnerNumberModel(1, 1, MOST_SURFACES, 1));
    private final JSpinner most = new JSpinner(new SpinnerNumberModel(4, 1, MOST_SURFACES, 1));
    private final JCheckBox loop = new JCheckBox("On repeat too");
    private final JButton pins = new JButton();
    private final JLabel hint = new JLabel("Pins: I in the grid");
    private boolean following;

    /** Controls for the session's rules. */
    RuleControls(SessionModel session) {
        super(new MigLayout("insets 2 12 6 4, gapx 4, gapy 2, wrap 3, hidemode 3", "[][]8[grow]"));
        this.session = session;
        add(reach);
        add(named(cm, "Reach in centimetres"), "split 2");
        add(new JLabel("cm"));
        add(noCrossing);
        add(atTempo);
        add(named(tempo, "Tempo that must be possible"), "split 2");
        add(new JLabel("bpm"));
        add(loop);
        add(surfaces);
        add(named(least, "Fewest surfaces"), "split 3");
        add(new JLabel("to"));
        add(named(most, "Most surfaces"));
        add(pins, "split 2, h 24!");
        Paints.type(hint, 88, false);
        hint.setForeground(Inks.QUIET.color());
        add(hint, "wmin 0");
        hint.setToolTipText(PINNING);
        atTempo.setToolTipText(
                "Every move of a limb possible at that tempo, by an estimate from published"
                        + " measurements: no verdict on a person");
        noCrossing.setToolTipText(
                "The right hand stays at the right of the left, give or take 10 cm");
        loop.setToolTipText("Reach, tempo and crossing hold on repeat as well");
        pins.setToolTipText(PINNING);
        reach.setToolTipText("Two strokes of one limb in a row lie at most so far apart, in cm");
        surfaces.setToolTipText("How many different surfaces the whole pattern uses");
        cm.setToolTipText("In centimetres, centre to centre");
        tempo.setToolTipText("In beats a minute");
        reach.setMnemonic('R');
        atTempo.setMnemonic('B');
        surfaces.setMnemonic('S');
        noCrossing.setMnemonic('N');
        loop.setMnemonic('O');
        narrow(cm, 3);
        narrow(tempo, 3);
        narrow(least, 2);
        narrow(most, 2);
        for (JCheckBox box : List.of(reach, atTempo, noCrossing, surfaces, loop)) {
            box.addActionListener(e -> changed());
        }
        for (JSpinner spinner : List.of(cm, tempo, least, most)) {
            spinner.addChangeListener(e -> changed());
        }
        pins.addActionListener(e -> put(others()));
        session.addListener(this::follow);
        follow();
    }

    /** Switches that are cut off cannot be read. */
    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    /** No wider than its figures. */
    private static void narrow(JSpinner spinner, int figures) {
        spinner.putClientProperty("FlatLaf.style", "minimumWidth: 20");
        if (spinner.getEditor() instanceof JSpinner.DefaultEditor editor) {
            editor.getTextField().setColumns(figures);
        }
    }

    private static <C extends JComponent> C named(C component, String name) {
        component.getAccessibleContext().setAccessibleName(name);
        return component;
    }

    /** The rules that are switched on, pins as they are. */
    private void changed() {
        if (following) {
            return;
        }
        List<Rule> rules = others();
        rules.addAll(pinned());
        put(rules);
    }

    private List<Rule> others() {
        List<Rule> rules = new ArrayList<>();
        if (reach.isSelected()) {
            rules.add(new Rule.Reach((Integer) cm.getValue()));
        }
        if (atTempo.isSelected()) {
            rules.add(new Rule.AtTempo(new Tempo((Integer) tempo.getValue())));
        }
        if (noCrossing.isSelected()) {
            rules.add(Rule.NoCrossing.usual());
        }
        if (surfaces.isSelected()) {
            int from = (Integer) least.getValue();
            rules.add(new Rule.Surfaces(from, Math.max(from, (Integer) most.getValue())));
        }
        if (loop.isSelected()) {
            rules.add(new Rule.Loop());
        }
        return rules;
    }

    private List<Rule> pinned() {
        return session.session().rules().stream().filter(r -> r instanceof Rule.Pin).toList();
    }

    private void put(List<Rule> rules) {
        session.keepEditing("Rules", session.session().with(rules));
    }

    private void follow() {
        following = true;
        try {
            Session now = session.session();
            Optional<Rule.Reach> ofReach = rule(now, Rule.Reach.class);
            reach.setSelected(ofReach.isPresent());
            ofReach.ifPresent(r -> cm.setValue((int) r.cm()));
            Optional<Rule.AtTempo> ofTempo = rule(now, Rule.AtTempo.class);
            atTempo.setSelected(ofTempo.isPresent());
            ofTempo.ifPresent(r -> tempo.setValue(r.tempo().beatsPerMinute()));
            noCrossing.setSelected(rule(now, Rule.NoCrossing.class).isPresent());
            Optional<Rule.Surfaces> ofSurfaces = rule(now, Rule.Surfaces.class);
            surfaces.setSelected(ofSurfaces.isPresent());
            ofSurfaces.ifPresent(
                    r -> {
                        least.setValue(r.least());
                        most.setValue(r.most());
                    });
            loop.setSelected(rule(now, Rule.Loop.class).isPresent());
            int count = pinned().size();
            pins.setText(count == 1 ? "Remove 1 pin" : "Remove " + count + " pins");
            pins.setVisible(count > 0);
            hint.setVisible(count == 0);
            cm.setEnabled(reach.isSelected());
            tempo.setEnabled(atTempo.isSelected());
            least.setEnabled(surfaces.isSelected());
            most.setEnabled(surfaces.isSelected());
        } finally {
            following = false;
        }
    }

    private static <R extends Rule> Optional<R> rule(Session session, Class<R> kind) {
        return session.rules().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }
}
