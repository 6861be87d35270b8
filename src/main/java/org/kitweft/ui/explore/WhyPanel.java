package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.role.Reason;
import org.kitweft.explore.role.RoleScore;
import org.kitweft.groove.Role;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.WideEnough;
import org.kitweft.ui.theme.WrappedText;

/**
 * Why a variation serves: its scores as time, fill and punch, the reasons for one of them with
 * their shares, how far each limb travels, and which move limits the tempo.
 */
final class WhyPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient Weighing weighing;
    private final JPanel reasons =
            new WideEnough(
                    new MigLayout("insets 2 4 2 4, gapx 8, gapy 1, wrap 2", "[right]8[grow,fill]"));
    private final WrappedText way = new WrappedText(" ", 95, Inks.TEXT::color);
    private final transient Map<Role, JToggleButton> roles = new EnumMap<>(Role.class);
    private transient Optional<Selected> shown = Optional.empty();

    /** At first the role that serves best; then it stays, so that variations can be compared. */
    private transient Optional<Role> asked = Optional.empty();

    WhyPanel(Weighing weighing) {
        super(
                new MigLayout(
                        "insets 4 8 4 10, gapx 6, gapy 3, wrap 1",
                        "[grow,fill]",
                        "[][grow,fill][][]"));
        this.weighing = weighing;
        add(switches());
        JScrollPane scroll = new JScrollPane(reasons);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(16));
        add(scroll, "wmin 0, hmin 30");
        way.getAccessibleContext().setAccessibleName("Travel and highest tempo");
        add(way, "wmin 0");
        WrappedText caveat = new WrappedText(ReachModel.CAVEAT, 82, Inks.QUIET::color);
        caveat.setToolTipText(
                "Travel and tempo: times of moves by Fitts's law with published constants, and the"
                        + " centimetres of the kit");
        // Beside the caveat rather than the roles: the panel can be narrow then.
        add(caveat, "split 2, wmin 0, growx");
        add(weigh(), "growx 0, bottom");
    }

    private JPanel switches() {
        JPanel row =
                new JPanel(new MigLayout("insets 0, gapx 4", "[grow,fill][grow,fill][grow,fill]"));
        ButtonGroup group = new ButtonGroup();
        for (Role role : Role.values()) {
            JToggleButton button = new JToggleButton(role.id());
            button.putClientProperty("FlatLaf.style", "minimumWidth: 20; margin: 2,3,2,3");
            button.setToolTipText("How well it serves as " + role.id() + ", 0 to 100 %, and why");
            button.addActionListener(e -> ask(role));
            Paints.type(button, 95, false);
            group.add(button);
            roles.put(role, button);
            row.add(button);
        }
        return row;
    }

    private JButton weigh() {
        JButton weigh = new JButton("Weigh…");
        weigh.putClientProperty("FlatLaf.style", "minimumWidth: 20; margin: 2,6,2,6");
        Paints.type(weigh, 95, false);
        weigh.setMnemonic('W');
        weigh.setToolTipText("Say yourself what makes good time, a good fill, a good punch");
        weigh.addActionListener(
                e -> WeightsEditor.show(SwingUtilities.getWindowAncestor(this), weighing));
        return weigh;
    }

    /** Reasons of this role are shown until another is asked for. */
    void ask(Role role) {
        asked = Optional.of(role);
        showReasons();
    }

    /** Shows what is known of a groove. */
    void show(Selected selected) {
        shown = Optional.of(selected);
        way.setText(selected.way());
        for (Role role : Role.values()) {
            long percent = Math.round(100 * selected.fit().of(role).value());
            JToggleButton button = roles.get(role);
            button.setText("%s %d %%".formatted(capital(role.id()), percent));
            button.getAccessibleContext()
                    .setAccessibleName("%s %d percent, show why".formatted(role.id(), percent));
        }
        showReasons();
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    private void showReasons() {
        reasons.removeAll();
        shown.ifPresent(
                selected -> {
                    Role role = asked.orElse(selected.fit().best());
                    asked = Optional.of(role);
                    roles.get(role).setSelected(true);
                    RoleScore score = selected.fit().of(role);
                    for (Reason reason : score.reasons()) {
                        reasons.add(share(reason));
                        reasons.add(text(reason), "wmin 0");
                    }
                    if (score.reasons().isEmpty()) {
                        reasons.add(new JLabel("Nothing speaks for it."), "span 2");
                    }
                });
        reasons.revalidate();
        reasons.repaint();
    }

    private static JLabel share(Reason reason) {
        JLabel share = new JLabel(Math.round(100 * reason.share()) + " %");
        Paints.type(share, 95, true);
        return share;
    }

    private static JLabel text(Reason reason) {
        JLabel text = new JLabel(capital(reason.text()));
        Paints.type(text, 95, false);
        text.setToolTipText(
                "%s: %d of a hundred points come of this"
                        .formatted(capital(reason.text()), Math.round(100 * reason.share())));
        return text;
    }
}
