package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.role.Feature;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.groove.Role;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/**
 * All weights at a glance, a row a feature and a slider a role, from "speaks against" over "not at
 * all" to "much". Each change counts at once.
 */
final class WeightsEditor extends JPanel {
    private static final long serialVersionUID = 1;

    /** A weight of 1 in steps of the slider. */
    private static final int WHOLE = 10;

    private final transient Weighing weighing;
    private final transient List<Runnable> cells = new ArrayList<>();
    private final transient Runnable follower = this::follow;
    private boolean following;

    WeightsEditor(Weighing weighing) {
        super(
                new MigLayout(
                        "insets 10 16 10 16, gapx 14, gapy 2, wrap 4",
                        "[][grow,sg][grow,sg][grow,sg]"));
        this.weighing = weighing;
        add(heading("How much does it count when a groove…"));
        for (Role role : Role.values()) {
            add(heading("for " + role.id()));
        }
        for (Feature feature : Feature.values()) {
            add(new JLabel(words(feature)));
            for (Role role : Role.values()) {
                add(cell(role, feature), "growx");
            }
        }
        follow();
    }

    /** Listens only while it is open: the weights outlive it. */
    @Override
    public void addNotify() {
        super.addNotify();
        weighing.addListener(follower);
        follow();
    }

    @Override
    public void removeNotify() {
        weighing.removeListener(follower);
        super.removeNotify();
    }

    private static JLabel heading(String text) {
        JLabel label = new JLabel(text);
        Paints.type(label, 100, true);
        return label;
    }

    private static String words(Feature feature) {
        return switch (feature) {
            case SYNCOPATED -> "is syncopated where it stands out";
            case BACK_BEAT -> "has a back beat";
            case ACCENTS_OFF_BEAT -> "has accents off the beat";
            case TOGETHER -> "has limbs striking together";
            default -> feature.reason();
        };
    }

    private JComponent cell(Role role, Feature feature) {
        JPanel both = new JPanel(new MigLayout("insets 0, gapx 4", "[grow,fill][]"));
        JSlider slider = new JSlider(-WHOLE, WHOLE);
        slider.setPreferredSize(
                new Dimension(UIScale.scale(110), slider.getPreferredSize().height));
        JLabel label = new JLabel();
        Paints.type(label, 90, false);
        String name = "%s, for %s".formatted(feature.reason(), role.id());
        slider.getAccessibleContext().setAccessibleName(name);
        slider.setToolTipText(
                name
                        + ": −1 (its absence counts) to 1; middle: not at all. Arrows change it by 0.1");
        slider.addChangeListener(
                e -> {
                    double weight = slider.getValue() / (double) WHOLE;
                    label.setText(Weighing.words(weight));
                    if (!following && !slider.getValueIsAdjusting()) {
                        weighing.weigh(role, feature, weight);
                    }
                });
        cells.add(
                () -> {
                    double weight = weighing.weights().of(role, feature);
                    slider.setValue((int) Math.round(weight * WHOLE));
                    label.setText(Weighing.words(weight));
                    label.setForeground(weight == 0 ? Inks.QUIET.color() : Inks.TEXT.color());
                });
        both.add(slider);
        both.add(label, "w 105!");
        return both;
    }

    private void follow() {
        following = true;
        try {
            cells.forEach(Runnable::run);
        } finally {
            following = false;
        }
    }

    /** Opens the editor beside a window, which can be worked on all the while. */
    static void show(Window owner, Weighing weighing) {
        RoleWeights before = weighing.weights();
        JDialog dialog = new JDialog(owner, "What counts", Dialog.ModalityType.MODELESS);
        JScrollPane scroll = new JScrollPane(new WeightsEditor(weighing));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(16));
        dialog.add(scroll);
        JPanel buttons = new JPanel(new MigLayout("insets 6 16 10 16", "[][][grow][]"));
        buttons.add(
                button(
                        "Defaults",
                        'D',
                        "All weights as Kitweft comes with them",
                        () -> weighing.use(RoleWeights.DEFAULT)));
        buttons.add(
                button(
                        "As before",
                        'B',
                        "All weights as they were when this was opened",
                        () -> weighing.use(before)));
        JLabel kept = new JLabel("Kept on this computer; the list follows at once.");
        Paints.type(kept, 90, false);
        buttons.add(kept, "wmin 0");
        JButton close = button("Close", 'C', "Close (Escape)", dialog::dispose);
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
                Math.min(dialog.getWidth(), most.width * 9 / 10),
                Math.min(dialog.getHeight(), most.height * 9 / 10));
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
    }

    private static JButton button(String text, char mnemonic, String tip, Runnable body) {
        JButton button = new JButton(text);
        button.setMnemonic(mnemonic);
        button.setToolTipText(tip);
        button.addActionListener(e -> body.run());
        return button;
    }
}
