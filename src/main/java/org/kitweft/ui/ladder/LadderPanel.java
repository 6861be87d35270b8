package org.kitweft.ui.ladder;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.ui.explore.Audition;
import org.kitweft.ui.explore.ListKeys;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.search.FindingRows;
import org.kitweft.ui.search.FindingRows.Column;
import org.kitweft.ui.search.FindingRows.Heading;
import org.kitweft.ui.search.FindingTable;
import org.kitweft.ui.search.WatchBar;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.WideEnough;

/**
 * The rungs to the groove in the grid, heard one by one with the arrow keys; all of them go into
 * the lesson at once. Follows the grid while it is shown.
 */
public final class LadderPanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final String EDIT = "Choose rung";

    private final transient SessionModel session;
    private final transient Climb climb;
    private final transient Audition audition;
    private final transient Notices notices;
    private final JLabel line = new JLabel(" ");
    private final JButton keep = new JButton("★ Keep all rungs in the lesson");
    private final FindingRows rows;
    private final FindingTable table;
    private final WatchBar watch;

    /** The ladder of a session. */
    public LadderPanel(SessionModel session, Playhead playhead, Tasks tasks, Notices notices) {
        super(new BorderLayout());
        this.session = session;
        this.notices = notices;
        climb = new Climb(session, tasks);
        audition = new Audition(session, playhead);
        rows = new FindingRows(headings(), tasks, notices);
        table = new FindingTable("Rungs of the ladder", rows);
        watch = new WatchBar(climb::part, climb::stop);
        JPanel all =
                new WideEnough(
                        new MigLayout(
                                "insets 8 12 6 12, gapy 4, hidemode 3",
                                "[grow,fill][][]",
                                "[][grow,fill]"));
        Paints.type(line, 105, true);
        all.add(line, "wmin 0");
        all.add(watch, "w 220!");
        all.add(keep, "wrap");
        all.add(table, "span 3, grow, wmin 760");
        JScrollPane scroll = new JScrollPane(all);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll, BorderLayout.CENTER);
        wire();
        climb.follow();
    }

    private static List<Heading> headings() {
        return List.of(
                new Heading(Column.LEAD, "Rung", "From the plainest to the groove", 50),
                new Heading(Column.WORDS, "One new thing", "What this rung adds", 420),
                new Heading(Column.DIFFICULTY, "Difficulty", Difficulty.UNIT, 180),
                new Heading(Column.STICKING, "Sticking", "One letter a step, - a rest", 200),
                new Heading(Column.VOICING, "Voicing", "What each letter strikes", 360));
    }

    private void wire() {
        keep.setMnemonic('L');
        keep.setToolTipText("Each rung becomes an item of the lesson, in order " + ListKeys.KEEPS);
        keep.addActionListener(e -> keepAll());
        table.onChosen(rung -> audition.hear(EDIT, now -> now.with(rung.recipe())));
        table.onKeys(this::take, this::keepAll);
        climb.addListener(this::showLadder);
        session.addListener(
                () -> {
                    if (isVisible()) {
                        climb.follow();
                    }
                });
        addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentShown(ComponentEvent event) {
                        climb.follow();
                    }
                });
    }

    private void showLadder() {
        watch.follow();
        line.setText(climb.line().isEmpty() ? " " : climb.line());
        line.setToolTipText(climb.line());
        line.setForeground((climb.fault().isEmpty() ? Inks.TEXT : Inks.FAULT).color());
        keep.setEnabled(climb.ladder().isPresent());
        rows.show(climb.rungs());
    }

    private void take() {
        if (table.chosen().isPresent()) {
            audition.take();
            notices.note("In the grid: " + session.recipe().sticking().text());
        }
    }

    private void keepAll() {
        if (climb.ladder().isEmpty()) {
            return;
        }
        try {
            climb.keepAll();
            notices.note("%d rungs kept in the lesson".formatted(climb.rungs().size()));
        } catch (IllegalArgumentException full) {
            notices.fault(full.getMessage());
        }
    }

    /** What takes the keys: the rungs. */
    public JComponent focusTarget() {
        return table.focusTarget();
    }
}
