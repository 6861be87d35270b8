package org.kitweft.ui.transport;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.geom.Ellipse2D;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.kitweft.kit.Limb;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Paints;

/** Mute and solo for each limb. */
final class LimbSwitches extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient PlayModel play;
    private final Map<Limb, JToggleButton> mutes = new EnumMap<>(Limb.class);
    private final Map<Limb, JToggleButton> solos = new EnumMap<>(Limb.class);

    LimbSwitches(PlayModel play) {
        super(new MigLayout("insets 0, gap 0"));
        this.play = play;
        setOpaque(false);
        for (Limb limb : Limb.values()) {
            JLabel name = new JLabel(limb.shortName(), new Dot(limb), JLabel.LEADING);
            name.setIconTextGap(UIScale.scale(4));
            name.setToolTipText(limb.words());
            add(name, "gapleft 6");
            mutes.put(limb, add(limb, "M", "Mute the "));
            solos.put(limb, add(limb, "S", "Only the "));
        }
        mutes.forEach(
                (limb, button) ->
                        button.addActionListener(
                                e -> play.change(s -> s.withMuted(flipped(s.muted(), limb)))));
        solos.forEach(
                (limb, button) ->
                        button.addActionListener(
                                e -> play.change(s -> s.withSolo(flipped(s.solo(), limb)))));
    }

    private JToggleButton add(Limb limb, String text, String what) {
        JToggleButton button = new JToggleButton(text);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.setToolTipText(what + limb.words());
        button.getAccessibleContext().setAccessibleName(what + limb.words());
        button.setMargin(new Insets(2, 3, 2, 3)); // scaled by the look and feel
        add(button);
        return button;
    }

    private static Set<Limb> flipped(Set<Limb> limbs, Limb limb) {
        Set<Limb> flipped = EnumSet.noneOf(Limb.class);
        flipped.addAll(limbs);
        if (!flipped.remove(limb)) {
            flipped.add(limb);
        }
        return flipped;
    }

    /** Shows what is muted now. */
    void follow() {
        mutes.forEach((limb, b) -> b.setSelected(play.settings().muted().contains(limb)));
        solos.forEach((limb, b) -> b.setSelected(play.settings().solo().contains(limb)));
    }

    /** The limb's colour. */
    private record Dot(Limb limb) implements Icon {
        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D g = Paints.smooth(graphics);
            try {
                Color color = LimbColors.of(limb);
                g.setColor(color);
                Ellipse2D disc =
                        new Ellipse2D.Double(x + 1, y + 1, getIconWidth() - 2, getIconHeight() - 2);
                g.fill(disc);
                g.setColor(color.darker());
                g.draw(disc);
            } finally {
                g.dispose();
            }
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(12);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(12);
        }
    }
}
