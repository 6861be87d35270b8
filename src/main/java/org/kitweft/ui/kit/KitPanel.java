package org.kitweft.ui.kit;

import java.awt.BorderLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.Target;
import org.kitweft.ui.theme.Paints;

/**
 * The kit seen from the player's seat and above, where letters are put on surfaces.
 *
 * <p>Keys: a letter takes its token up, arrows move it, Enter puts it down, Shift Enter adds a
 * place to its path; S next sound, T tacet, O hands over, A accents, G ghost strokes, P all
 * strokes, Delete takes the last place away.
 */
public final class KitPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient Placing placing;
    private final KitView view;
    private final JLabel line = new JLabel(" ");
    private final Map<Target, JToggleButton> aims = new EnumMap<>(Target.class);

    /**
     * A panel for what the session holds.
     *
     * @param audition strikes a sound as it is chosen
     */
    public KitPanel(SessionModel session, Playhead playhead, BiConsumer<Kit, SoundName> audition) {
        super(new BorderLayout());
        placing = new Placing(session, audition::accept);
        view = new KitView(KitModel.of(placing.recipe()), placing, playhead);
        view.getAccessibleContext().setAccessibleName("Kit from above");
        add(header(), BorderLayout.NORTH);
        add(view, BorderLayout.CENTER);
        new KitHands(view, placing).install();
        session.addListener(() -> view.show(KitModel.of(placing.recipe())));
        playhead.addListener(view::repaint);
        placing.addListener(this::follow);
        view.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        view.repaint();
                        follow();
                    }

                    @Override
                    public void focusLost(FocusEvent event) {
                        view.repaint();
                    }
                });
        follow();
    }

    private JPanel header() {
        JPanel header =
                new JPanel(new MigLayout("insets 5 12 5 10, gap 4", "[]10[grow,fill][][][]"));
        JLabel title = new JLabel("Kit");
        Paints.type(title, 100, true);
        title.setLabelFor(view);
        header.add(title);
        header.add(line, "wmin 0");
        ButtonGroup group = new ButtonGroup();
        for (Target target : Target.values()) {
            JToggleButton button = new JToggleButton(shortName(target));
            button.putClientProperty("JButton.buttonType", "toolBarButton");
            button.setToolTipText("Place for %s (key %s)".formatted(target.words(), key(target)));
            button.getAccessibleContext().setAccessibleName("Place for " + target.words());
            button.addActionListener(e -> placing.aim(target));
            group.add(button);
            header.add(button);
            aims.put(target, button);
        }
        return header;
    }

    private static String shortName(Target target) {
        return switch (target) {
            case ALL -> "all";
            case ACCENTS -> "accents";
            case GHOSTS -> "ghosts";
        };
    }

    private static String key(Target target) {
        return switch (target) {
            case ALL -> "P";
            case ACCENTS -> "A";
            case GHOSTS -> "G";
        };
    }

    /** The component that takes the keys. */
    public JComponent focusTarget() {
        return view;
    }

    /** Larger signs, for showing across the room. */
    public void enlarge(double factor) {
        view.enlarge(factor);
    }

    private void follow() {
        line.setText(placing.said().isEmpty() ? "drag a letter, or press its key" : placing.said());
        aims.get(placing.target()).setSelected(true);
        view.getAccessibleContext().setAccessibleDescription(line.getText());
        view.repaint();
    }
}
