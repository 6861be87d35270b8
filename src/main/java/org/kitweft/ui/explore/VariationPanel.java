package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.text.Position;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Groove;
import org.kitweft.ui.count.Numbers;
import org.kitweft.ui.lesson.LessonEdits;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Keys;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.WrappedText;

/**
 * The variations that keep the rules: how many, a list to hear them, and why the selected one
 * serves. Arrow keys put the next one on the kit, from the next bar on while it plays; Enter or S
 * keeps one in the lesson.
 */
public final class VariationPanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int STEPS = 1000;

    private final transient SessionModel session;
    private final transient Exploring exploring;
    private final transient Weighing weighing;
    private final transient Tasks tasks;
    private final transient Audition audition;
    private final transient LongSupplier seeds;
    private final VariationList model;
    private final Rows list;
    private final VariationRow row;
    private final VariationHead head;
    private final WhyPanel why;
    private final JLabel total = new JLabel(" ");
    private final WrappedText fault = new WrappedText("", 100, Inks.FAULT::color);
    private final JComboBox<Order> order = new JComboBox<>(Order.values());
    private final JButton surprise = new JButton("Surprise me");
    private final JButton keep = new JButton("★ Keep");
    private final JPanel progress =
            new JPanel(new MigLayout("insets 0 0 3 0, gapx 8", "[][grow,fill][]"));
    private final JLabel looked = new JLabel(" ");
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final JButton stop = new JButton("Go on");
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
            LongSupplier seeds) {
        super(new MigLayout("insets 0, gap 0", "[grow 90,fill][grow 10,fill]", "[grow,fill]"));
        this.session = session;
        this.exploring = exploring;
        this.weighing = weighing;
        this.tasks = tasks;
        this.audition = new Audition(session, playhead);
        this.seeds = seeds;
        model = new VariationList(tasks);
        row = new VariationRow(model);
        head = new VariationHead(model);
        why = new WhyPanel(weighing);
        list = new Rows(model, row);
        list.addListSelectionListener(
                e -> {
                    if (!e.getValueIsAdjusting() && !following) {
                        hearSelected();
                    }
                });
        Keys.bind(list, "ENTER", this::keep);
        Keys.bind(list, "S", this::keep);
        // Lists take the space bar for themselves; here it plays, as everywhere.
        list.getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "none");
        JPanel left = new JPanel(new BorderLayout());
        left.add(controls(), BorderLayout.NORTH);
        left.add(scroll(), BorderLayout.CENTER);
        left.setBorder(BorderFactory.createEmptyBorder(4, 4, 6, 4));
        add(left, "w min:min:, hmin pref");
        add(why, "w min:min:");
        listen();
        follow();
    }

    private void listen() {
        order.addActionListener(e -> showList());
        surprise.addActionListener(e -> surprise());
        keep.addActionListener(e -> keep());
        stop.addActionListener(e -> stopOrGoOn());
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
                        new MigLayout(
                                "insets 0 0 3 0, gapx 6, gapy 3, hidemode 3", "[grow,fill][][][]"));
        Paints.type(total, 105, true);
        all.add(total, "wmin 0");
        order.getAccessibleContext().setAccessibleName("Order of the variations");
        order.setToolTipText(
                "By travel and number the order is exact; by role as far as was looked");
        all.add(order);
        for (JButton button : List.of(surprise, keep)) {
            button.putClientProperty("FlatLaf.style", "minimumWidth: 20; margin: 2,7,2,7");
        }
        surprise.setMnemonic('U');
        surprise.setToolTipText("Any one of them, each with the same chance");
        all.add(surprise);
        keep.setToolTipText("Keep the variation on the kit in the lesson (Enter or S in the list)");
        all.add(keep, "wrap");
        Paints.type(looked, 92, false);
        looked.getAccessibleContext().setAccessibleName("How far the search is");
        progress.add(looked);
        progress.add(bar, "h 6!");
        Paints.type(stop, 92, false);
        progress.add(stop, "h 22!");
        all.add(progress, "span 4, wrap");
        all.add(fault, "span 4, wmin 0");
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
        Order by = order.getItemAt(order.getSelectedIndex());
        why.ask(by.role());
        model.show(shown, by, weighing.weights());
        head.repaint();
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
        RankedSearch search = model.search();
        boolean ranked = model.order().role().isPresent() && shown.isPresent();
        progress.setVisible(ranked);
        if (ranked) {
            looked.setText(search.words());
            looked.setToolTipText(
                    search.standing().isComplete()
                            ? "No other variation serves better"
                            : "There may be better ones among those not looked at");
            bar.setVisible(search.isRunning());
            bar.setValue((int) (search.part() * STEPS));
            stop.setVisible(search.isRunning() || search.canGoOn());
            stop.setText(search.isRunning() ? "Stop" : "Look on");
            stop.setToolTipText(
                    search.isRunning()
                            ? "Stop looking; what was found stays"
                            : "Look at more of them");
        }
    }

    private void stopOrGoOn() {
        if (model.search().isRunning()) {
            model.search().stop();
        } else {
            model.search().goOn();
        }
        rowsChanged();
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

    /** The groove as it stands goes into the lesson; the item is not opened, the list stays. */
    private void keep() {
        session.edit(
                "Keep variation",
                session.session()
                        .with(
                                LessonEdits.addGroove(session.session()).lesson(),
                                OptionalInt.empty()));
    }

    /** Rows of equal height that fill the width, however many they are. */
    private static final class Rows extends JList<Variation> {
        private static final long serialVersionUID = 1;

        Rows(VariationList model, VariationRow row) {
            super(model);
            setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
            setCellRenderer(row);
            setFixedCellWidth(200);
            getAccessibleContext().setAccessibleName("Variations");
            setToolTipText(
                    "Up and Down put the next one on the kit, Enter or S keeps it in the lesson");
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setFixedCellHeight(
                    getFontMetrics(Paints.font(1, false)).getHeight() + UIScale.scale(6));
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        /** Typing a letter would look through millions of rows for one that begins with it. */
        @Override
        public int getNextMatch(String prefix, int start, Position.Bias direction) {
            return -1;
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return new Dimension(UIScale.scale(300), 4 * getFixedCellHeight());
        }
    }
}
