package org.kitweft.ui.search;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.search.NoneCan;
import org.kitweft.ui.explore.Audition;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.WideEnough;

/** Searching both ways: for a role, and from a groove. */
public final class SearchPanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final String FOR_A_ROLE = "For a role";
    private static final String FROM_A_GROOVE = "From a groove";

    private final CardLayout cards = new CardLayout();
    private final JPanel pages = new JPanel(cards);
    private final JToggleButton forward = new JToggleButton(FOR_A_ROLE, true);
    private final JToggleButton backward = new JToggleButton(FROM_A_GROOVE);
    private final RolePane role;
    private final OriginPane origin;

    /**
     * A panel that searches for a session.
     *
     * @param seeds where other seeds come from
     * @param midiFile asks for a MIDI file
     * @param forbidding is told which steps of the grid forbid what was sought, or that none does
     */
    public SearchPanel(
            SessionModel session,
            Playhead playhead,
            Tasks tasks,
            Notices notices,
            LongSupplier seeds,
            Supplier<Optional<Path>> midiFile,
            Consumer<Optional<NoneCan>> forbidding) {
        super(new BorderLayout());
        Audition audition = new Audition(session, playhead);
        role = new RolePane(session, audition, tasks, notices, seeds);
        origin = new OriginPane(session, audition, tasks, notices, midiFile, forbidding);
        ButtonGroup group = new ButtonGroup();
        JPanel ways = new JPanel(new MigLayout("insets 0, gap 6, wrap 1", "[fill]"));
        way(forward, group, ways, 'A', "Stickings and voicings that serve as time, fill or punch");
        way(backward, group, ways, 'G', "Stickings and voicings that produce a groove");
        pages.add(role, FOR_A_ROLE);
        pages.add(origin, FROM_A_GROOVE);
        JPanel all =
                new WideEnough(
                        new MigLayout("insets 8 12 6 12, gapx 14", "[][grow,fill]", "[grow,fill]"));
        all.add(ways, "top");
        all.add(pages, "wmin 820");
        JScrollPane scroll = new JScrollPane(all);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll, BorderLayout.CENTER);
    }

    private void way(
            JToggleButton button, ButtonGroup group, JPanel panel, char mnemonic, String tip) {
        button.setMnemonic(mnemonic);
        button.setToolTipText(tip);
        button.addActionListener(e -> cards.show(pages, button.getText()));
        group.add(button);
        panel.add(button);
    }

    /** Looks for what produces the groove in the grid. */
    public void takeGrid() {
        backward.doClick();
        origin.takeGrid();
    }

    /** Looks for what produces the groove of a MIDI file. */
    public void takeFile(Path path) {
        backward.doClick();
        origin.takeFile(path);
    }

    /** What takes the keys: what is found, or what is asked. */
    public JComponent focusTarget() {
        return backward.isSelected() ? origin.focusTarget() : role.focusTarget();
    }
}
