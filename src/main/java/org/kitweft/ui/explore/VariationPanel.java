package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Groove;
import org.kitweft.ui.count.Numbers;
import org.kitweft.ui.lesson.LessonEdits;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.FlowWrap;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.WrappedText;

/**
 * The variations that keep the rules: how many, a list to hear them, and why the selected one
 * serves. Its list has {@link ListKeys}: a variation is heard, taken, kept.
 */
public final class VariationPanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int MARGIN = 4;

    private final transient SessionModel session;
    private final transient Exploring exploring;
    private final transient Weighing weighing;
    private final transient Tasks tasks;
    private final transient Audition audition;
    private final transient LongSupplier seeds;
    private final transient Notices notices;
    private final VariationList model;
    private final VariationRows list;
    private final VariationRow row;
    private final VariationHead head;
    private final WhyPanel why;
    private final JLabel total = new JLabel(" ");
    private final WrappedText fault = new WrappedText("", 100, Inks.FAULT::color);
    private final JComboBox<Order> order = new JComboBox<>(Order.values());
    private final JButton surprise = new JButton("Surprise me");
    private final JButton keep = new JButton("★ Keep");
    private final JPanel switches = new JPanel(new MigLayout("insets 0, gapx 6"));
    private final SearchLine progress;
    private transient Optional<Possibilities> shown = Optional.empty();
    private transient Optional<Variation> chosen = Optional.empty();
    private transient Optional<Groove> explained = Optional.empty();
    private transient Tasks.Running explaining = () -> {};
    private boolean following;

    /**
     * Whether the chosen variation has come on the kit; while it plays that takes until the bar.
     */
    private boolean arrived;

    /**
     * A panel for the possibilities of a session.
     *
     * @param weighing what counts for a role
     * @param seeds where chance comes from
     */
    public VariationPanel(
            SessionModel session,
            Exploring exploring,
            Weighing weighing,
            Playhead playhead,
            Tasks tasks,
            LongSupplier seeds,
            Notices notices) {
        super(new MigLayout("insets 0, gap 0", "[grow 60,fill][grow 40,fill]", "[grow,fill]"));
        this.session = session;
        this.exploring = exploring;
        this.weighing = weighing;
        this.tasks = tasks;
        this.audition = new Audition(session, playhead);
        this.seeds = seeds;
        this.notices = notices;
        model = new VariationList(tasks);
        progress = new SearchLine(model.search());
        row = new VariationRow(model);
        head = new VariationHead(model);
        why = new WhyPanel(weighing);
        list = new VariationRows(model, row);
        list.addListSelectionListener(
                e -> {
                    if (!e.getValueIsAdjusting() && !following) {
                        hearSelected();
                    }
                });
        ListKeys.bind(list, this::take, this::keep);
        JPanel left =
                new JPanel(new BorderLayout()) {
                    private static final long serialVersionUID = 1;

                    /** The count may stand on a line of its own; the switches share one. */
                    @Override
                    public Dimension getMinimumSize() {
                        return new Dimension(
                                switches.getPreferredSize().width + 2 * MARGIN,
                                super.getMinimumSize().height);
                    }
                };
        left.add(controls(), BorderLayout.NORTH);
        left.add(scroll(), BorderLayout.CENTER);
        left.setBorder(BorderFactory.createEmptyBorder(4, MARGIN, 6, MARGIN));
        add(left, "w min:min:, hmin pref");
        add(why, "w min:min:");
        listen();
        follow();
    }

    private void listen() {
        order.addActionListener(
                e -> {
                    order().role().ifPresent(why::ask);
                    showList();
                });
        surprise.addActionListener(e -> surprise());
        keep.addActionListener(e -> keep());
        model.onChange(this::rowsChanged);
        exploring.addListener(this::follow);
        weighing.addListener(this::weighedAnew);
        session.addListener(this::explain);
    }

    private JScrollPane scroll() {
        JScrollPane scroll = new JScrollPane(list);
        scroll.setColumnHeaderView(head);
        scroll.setVerticalScrollBarPolicy(ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS);
        scroll.getVerticalScrollBar()
                .addAdjustmentListener(e -> model.seen(list.getLastVisibleIndex()));
        return scroll;
    }

    private JPanel controls() {
        JPanel all =
                new JPanel(
                        new MigLayout("insets 0 0 3 0, gapy 3, hidemode 3, wrap 1", "[grow,fill]"));
        Paints.type(total, 105, true);
        order.getAccessibleContext().setAccessibleName("Order of the variations");
        order.setToolTipText(
                "By travel and number the order is exact; by role as far as was looked");
        for (JButton button : List.of(surprise, keep)) {
            button.putClientProperty("FlatLaf.style", "minimumWidth: 20; margin: 2,7,2,7");
        }
        surprise.setMnemonic('U');
        surprise.setToolTipText("Any one of them, each with the same chance");
        keep.setToolTipText("Keep the variation on the kit in the lesson " + ListKeys.KEEPS);
        for (JComponent part : List.of(order, surprise, keep)) {
            switches.add(part);
        }
        JPanel row = new JPanel(new FlowWrap(UIScale.scale(6)));
        row.add(total);
        row.add(switches);
        all.add(row, "wmin 0");
        all.add(progress);
        all.add(fault, "wmin 0");
        return all;
    }

    /** The component that takes the keys. */
    public JComponent focusTarget() {
        return list;
    }

    private void follow() {
        boolean none = !exploring.fault().isEmpty();
        if (exploring.isCounting()) {
            total.setText("counting…");
            total.setForeground(Inks.QUIET.color());
        } else if (none) {
            total.setText("None");
            total.setForeground(Inks.FAULT.color());
        } else {
            exploring.found().ifPresent(p -> total.setText(Numbers.brief(p.total()) + " playable"));
            total.setForeground(Inks.TEXT.color());
        }
        fault.setText(exploring.fault());
        fault.setVisible(none);
        total.setToolTipText(none ? exploring.fault() : exactTotal());
        boolean any = exploring.found().filter(p -> p.total().signum() > 0).isPresent();
        surprise.setEnabled(any);
        keep.setEnabled(any);
        // Called again when the ways of strokes are known: the list stays as it is then.
        if (!shown.equals(exploring.found())) {
            shown = exploring.found();
            chosen = Optional.empty();
            Optional<Steps> steps = shown.map(Steps::new);
            row.show(steps);
            head.show(steps);
            showList();
            explained = Optional.empty();
            explain();
        }
    }

    private String exactTotal() {
        return exploring
                .found()
                .map(p -> Numbers.exact(p.total()) + " variations keep your rules")
                .orElse("");
    }

    private void showList() {
        model.show(shown, order(), weighing.weights());
        head.repaint();
    }

    private Order order() {
        return order.getItemAt(order.getSelectedIndex());
    }

    private void weighedAnew() {
        explained = Optional.empty();
        explain();
        if (model.order().role().isPresent()) {
            showList();
        }
    }

    /** Rows may have moved: what was chosen stays selected, and is not heard anew. */
    private void rowsChanged() {
        following = true;
        try {
            int at = chosen.map(model::rowOf).orElse(-1);
            if (at >= 0) {
                list.setSelectedIndex(at);
            } else {
                list.clearSelection();
            }
        } finally {
            following = false;
        }
        progress.follow(model.order().role().isPresent() && shown.isPresent());
    }

    private void hearSelected() {
        int at = list.getSelectedIndex();
        if (at >= 0 && at < model.getSize() && shown.isPresent()) {
            hear(shown.get(), model.getElementAt(at));
        }
    }

    private void hear(Possibilities possibilities, Variation variation) {
        chosen = Optional.of(variation);
        arrived = false;
        audition.hear(possibilities, variation);
        explained = Optional.empty();
        explain();
    }

    private void surprise() {
        shown.ifPresent(
                p -> {
                    hear(p, p.sample(1, seeds.getAsLong()).get(0));
                    rowsChanged();
                });
    }

    /** The chosen variation, or else what is on the kit, is explained beside the list. */
    private void explain() {
        letGoIfMoved();
        Groove groove = session.groove();
        if (explained.equals(Optional.of(groove))) {
            return;
        }
        explained = Optional.of(groove);
        explaining.stop();
        Optional<Possibilities> possibilities = shown;
        Optional<Variation> variation = chosen;
        explaining =
                tasks.run(
                        "",
                        running ->
                                possibilities.isPresent() && variation.isPresent()
                                        ? Selected.of(
                                                possibilities.get(),
                                                variation.get(),
                                                weighing.weights())
                                        : Selected.of(groove, weighing.weights()),
                        why::show,
                        failure -> {
                            throw new IllegalStateException("a groove was not read", failure);
                        });
    }

    /** What was moved by hand since it came on the kit is no longer the chosen variation. */
    private void letGoIfMoved() {
        if (chosen.isEmpty() || shown.isEmpty()) {
            return;
        }
        boolean onKit =
                shown.get()
                        .recipe(chosen.get())
                        .voicing()
                        .strokes()
                        .equals(session.recipe().voicing().strokes());
        if (arrived && !onKit) {
            chosen = Optional.empty();
            explained = Optional.empty();
            rowsChanged();
        }
        arrived = onKit;
    }

    private void take() {
        if (chosen.isPresent()) {
            audition.take();
            notices.note("In the grid: a variation of " + session.recipe().sticking().text());
        }
    }

    /**
     * The chosen variation goes into the lesson, also while it waits for the bar line; else the
     * groove as it stands. The item is not opened, the list stays.
     */
    private void keep() {
        Session now = session.session();
        Session wanted =
                chosen.isPresent() && shown.isPresent() && !arrived
                        ? now.with(now.recipe().with(shown.get().recipe(chosen.get()).voicing()))
                        : now;
        try {
            session.edit(
                    "Keep variation", now.with(LessonEdits.addGroove(wanted).lesson(), now.item()));
            notices.note("Kept in the lesson: a variation of " + now.recipe().sticking().text());
        } catch (IllegalArgumentException full) {
            notices.fault(full.getMessage());
        }
    }
}
