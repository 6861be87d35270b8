package org.kitweft.ui.explore;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.LongSupplier;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.reach.Travel;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.ui.count.Numbers;
import org.kitweft.ui.lesson.LessonEdits;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Keys;
import org.kitweft.ui.theme.Paints;

/**
 * The variations that keep the rules: how many, and a list to hear them. Arrow keys put the next
 * one on the kit, from the next bar on while it plays; Enter keeps one in the lesson.
 */
public final class VariationPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final transient Exploring exploring;
    private final transient Audition audition;
    private final transient LongSupplier seeds;
    private final VariationList model;
    private final JList<Variation> list;
    private final JLabel total = new JLabel(" ");
    private final JComboBox<VariationList.Order> order =
            new JComboBox<>(VariationList.Order.values());
    private final JButton surprise = new JButton("Surprise me");
    private final JButton keep = new JButton("★ Keep");

    /**
     * A panel for the possibilities of a session.
     *
     * @param seeds where chance comes from
     */
    public VariationPanel(
            SessionModel session,
            Exploring exploring,
            Playhead playhead,
            Tasks tasks,
            LongSupplier seeds) {
        super(new BorderLayout());
        this.session = session;
        this.exploring = exploring;
        this.audition = new Audition(session, playhead);
        this.seeds = seeds;
        model = new VariationList(tasks);
        list = new JList<>(model);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Row());
        list.setFixedCellHeight(getFontMetrics(Paints.font(1, false)).getHeight() + 6);
        list.setFixedCellWidth(200);
        list.getAccessibleContext().setAccessibleName("Variations");
        list.setToolTipText(ReachModel.CAVEAT);
        list.addListSelectionListener(
                e -> {
                    if (!e.getValueIsAdjusting()) {
                        hearSelected();
                    }
                });
        Keys.bind(list, "ENTER", this::keep);
        JScrollPane scroll = new JScrollPane(list);
        scroll.getVerticalScrollBar()
                .addAdjustmentListener(e -> model.seen(list.getLastVisibleIndex()));
        add(head(), BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        setBorder(BorderFactory.createEmptyBorder(4, 4, 6, 12));
        order.addActionListener(e -> showList());
        surprise.addActionListener(e -> surprise());
        keep.addActionListener(e -> keep());
        exploring.addListener(this::follow);
        follow();
    }

    private JPanel head() {
        JPanel head =
                new JPanel(new MigLayout("insets 0 0 4 0, gapx 6, gapy 3", "[grow,fill][][]"));
        Paints.type(total, 105, true);
        head.add(total, "wmin 0, span 3, wrap");
        order.getAccessibleContext().setAccessibleName("Order of the variations");
        head.add(order);
        surprise.setToolTipText("Any one of them, each with the same chance");
        head.add(surprise);
        keep.setToolTipText("Keep the variation on the kit in the lesson (Enter)");
        head.add(keep);
        return head;
    }

    /** The component that takes the keys. */
    public JComponent focusTarget() {
        return list;
    }

    private void follow() {
        if (exploring.isCounting()) {
            total.setText("counting…");
            total.setForeground(Inks.QUIET.color());
        } else if (!exploring.fault().isEmpty()) {
            total.setText(exploring.fault());
            total.setForeground(Inks.FAULT.color());
        } else {
            exploring
                    .found()
                    .ifPresent(p -> total.setText(Numbers.brief(p.total()) + " playable here"));
            total.setForeground(Inks.TEXT.color());
        }
        total.setToolTipText(total.getText());
        boolean any = exploring.found().filter(p -> p.total().signum() > 0).isPresent();
        surprise.setEnabled(any);
        keep.setEnabled(any);
        showList();
    }

    private void showList() {
        model.show(exploring.found(), order.getItemAt(order.getSelectedIndex()));
    }

    private void hearSelected() {
        int row = list.getSelectedIndex();
        if (row >= 0 && row < model.getSize()) {
            exploring.found().ifPresent(p -> audition.hear(p, model.getElementAt(row)));
        }
    }

    private void surprise() {
        exploring.found().ifPresent(p -> audition.hear(p, p.sample(1, seeds.getAsLong()).get(0)));
    }

    /** The groove as it stands goes into the lesson; the item is not opened, the list stays. */
    private void keep() {
        session.edit(
                "Keep variation",
                session.session()
                        .with(
                                LessonEdits.addGroove(session.session()).lesson(),
                                OptionalInt.empty()));
    }

    /** Number, sounds, travel and highest tempo. */
    private final class Row extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> any, Object value, int index, boolean selected, boolean focus) {
            super.getListCellRendererComponent(any, "", index, selected, focus);
            if (value instanceof Variation variation && exploring.found().isPresent()) {
                Possibilities possibilities = exploring.found().get();
                Travel travel = possibilities.travel(variation.sounds());
                String tempo =
                        travel.tempoCeiling().isPresent()
                                ? "  ·  to %d bpm".formatted(travel.tempoCeiling().getAsInt())
                                : "";
                setText(
                        "%d   %.0f cm%s  ·  %s"
                                .formatted(
                                        index + 1,
                                        travel.totalCm(),
                                        tempo,
                                        sounds(variation.sounds())));
            }
            return this;
        }

        /** Runs of one sound are written once: {@code Snare ×3, Ride}. */
        private String sounds(List<SoundName> sounds) {
            List<String> runs = new ArrayList<>();
            int from = 0;
            for (int i = 1; i <= sounds.size(); i++) {
                if (i == sounds.size() || !sounds.get(i).equals(sounds.get(from))) {
                    String name = name(sounds.get(from));
                    runs.add(i - from > 1 ? name + " ×" + (i - from) : name);
                    from = i;
                }
            }
            return String.join(", ", runs);
        }

        private String name(SoundName sound) {
            return session.recipe()
                    .kit()
                    .surface(sound.surface())
                    .map(surface -> named(surface, sound))
                    .orElse(sound.text());
        }

        private String named(Surface surface, SoundName sound) {
            return surface.sounds().get(0).id().equals(sound.sound())
                    ? surface.name()
                    : surface.name() + " " + sound.sound().replace('-', ' ');
        }
    }
}
