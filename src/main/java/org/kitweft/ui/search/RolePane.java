package org.kitweft.ui.search;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.role.Reason;
import org.kitweft.explore.role.RoleScore;
import org.kitweft.explore.search.Serving;
import org.kitweft.groove.Role;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.explore.Audition;
import org.kitweft.ui.explore.ListKeys;
import org.kitweft.ui.search.FindingRows.Column;
import org.kitweft.ui.search.FindingRows.Heading;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Inks;

/** From a role to stickings and voicings that serve it: what is wished for, and what was found. */
final class RolePane extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int MOST_SEED = 999_999;
    private static final int MOST_REASONS = 4;
    private static final String EDIT = "Choose from search";

    /** How long to search. */
    private enum Patience {
        SHORT("short, 4,000 tries", 4_000),
        LONG("longer, 20,000 tries", 20_000),
        LONGEST("long, 100,000 tries", 100_000);

        private final String words;
        private final int tries;

        Patience(String words, int tries) {
            this.words = words;
            this.tries = tries;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** What stickings are made of. */
    private enum Makings {
        HANDS("hands", Set.of(Letter.R, Letter.L)),
        BASS_DRUM("hands and kick", Set.of(Letter.R, Letter.L, Letter.K)),
        FEET("hands and feet", Set.of(Letter.R, Letter.L, Letter.K, Letter.H)),
        ALL("all letters", Set.of(Letter.values()));

        private final String words;

        // A set that cannot be changed.
        @SuppressWarnings("ImmutableEnumChecker")
        private final Set<Letter> letters;

        Makings(String words, Set<Letter> letters) {
            this.words = words;
            this.letters = letters;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private final transient SessionModel session;
    private final transient RoleHunt hunt;
    private final transient Audition audition;
    private final transient Notices notices;
    private final transient LongSupplier seeds;
    private final JComboBox<Role> role = new JComboBox<>(Role.values());
    private final JSpinner strokes =
            new JSpinner(new SpinnerNumberModel(16, 1, Sticking.MAX_STROKES, 1));
    private final JCheckBox keepSticking = new JCheckBox("Keep the sticking of now");
    private final JComboBox<Makings> makings = new JComboBox<>(Makings.values());
    private final JComboBox<Patience> patience = new JComboBox<>(Patience.values());
    private final JSpinner seed = new JSpinner(new SpinnerNumberModel(1, 0, MOST_SEED, 1));
    private final JButton search = new JButton("Search");
    private final JButton another = new JButton("Another seed");
    private final JButton keep = new JButton("★ Keep");
    private final JLabel line = new JLabel(" ");
    private final JLabel where = new JLabel(" ");
    private final FindingRows rows;
    private final FindingTable table;
    private final WatchBar watch;

    RolePane(
            SessionModel session,
            Audition audition,
            Tasks tasks,
            Notices notices,
            LongSupplier seeds) {
        super(new BorderLayout(12, 0));
        this.session = session;
        this.audition = audition;
        this.notices = notices;
        this.seeds = seeds;
        hunt = new RoleHunt(session, tasks);
        rows = new FindingRows(headings(), tasks, notices);
        table = new FindingTable("Grooves that serve the role", rows);
        watch = new WatchBar(hunt::part, hunt::stop);
        add(wishes(), BorderLayout.WEST);
        JPanel right =
                new JPanel(
                        new MigLayout(
                                "insets 0, gapy 4, hidemode 3",
                                "[grow,fill][][]",
                                "[][grow,fill]"));
        right.add(line, "wmin 0");
        right.add(watch, "w 220!");
        right.add(keep, "wrap");
        right.add(table, "span 3, grow");
        add(right, BorderLayout.CENTER);
        role.setRenderer(new RoleName());
        wire();
        session.addListener(this::followSession);
        strokes.setValue(Math.min(session.groove().grid().stepsPerBar(), Sticking.MAX_STROKES));
        role.setSelectedItem(session.session().role());
        makings.setSelectedItem(Makings.BASS_DRUM);
        line.setText("Choose what the groove is for, then search.");
        line.setForeground(Inks.QUIET.color());
        followSession();
        keep.setEnabled(false);
    }

    private static List<Heading> headings() {
        return List.of(
                new Heading(
                        Column.LEAD,
                        "Score",
                        "How far it serves the role, 0 to 100 %: the mean of its features, weighed",
                        60),
                new Heading(Column.DIFFICULTY, "Difficulty", Difficulty.UNIT, 150),
                new Heading(Column.STICKING, "Sticking", "One letter a step, - a rest", 190),
                new Heading(Column.VOICING, "Voicing", "What each letter strikes", 300),
                new Heading(Column.WORDS, "Why", "What speaks for it, the weightiest first", 340));
    }

    private JPanel wishes() {
        JPanel wishes =
                new JPanel(new MigLayout("insets 0, gapx 8, gapy 4, wrap 2", "[right][grow,fill]"));
        row(wishes, "Role", 'R', role, "What the groove is to be for");
        row(wishes, "Strokes", 'O', strokes, "The length of the sticking in steps, rests counted");
        makings.setToolTipText("The letters that stickings are made of");
        makings.getAccessibleContext().setAccessibleName("Letters");
        wishes.add(makings);
        keepSticking.setMnemonic('C');
        keepSticking.setToolTipText("Search only where the sticking of now could go");
        wishes.add(keepSticking, "skip 1");
        row(wishes, "How long", 'W', patience, "How many grooves are looked at");
        row(wishes, "Seed", 'D', seed, "The same wish with the same seed finds the same again");
        search.setMnemonic('S');
        search.setToolTipText("Look for grooves that serve the role");
        another.setMnemonic('N');
        another.setToolTipText("Search with another seed: other grooves are found");
        wishes.add(another);
        wishes.add(search, "skip 1");
        where.setForeground(Inks.QUIET.color());
        wishes.add(where, "span 2, wmin 0, w 100:260:");
        return wishes;
    }

    private static void row(
            JPanel panel, String name, char mnemonic, JComponent field, String tip) {
        JLabel label = new JLabel(name);
        label.setLabelFor(field);
        label.setDisplayedMnemonic(mnemonic);
        field.setToolTipText(tip);
        field.getAccessibleContext().setAccessibleName(name);
        panel.add(label);
        panel.add(field, field instanceof JSpinner ? "split 2, w 64!" : "");
    }

    private void wire() {
        search.addActionListener(e -> search());
        another.addActionListener(
                e -> {
                    seed.setValue((int) Math.floorMod(seeds.getAsLong(), (long) MOST_SEED + 1));
                    search();
                });
        keepSticking.addActionListener(e -> followSession());
        keep.setToolTipText("Keep the chosen groove in the lesson " + ListKeys.KEEPS);
        keep.addActionListener(e -> keep());
        table.onChosen(
                finding -> {
                    Role asked = asked();
                    audition.hear(EDIT, now -> Keeping.taken(now, finding.recipe(), asked));
                });
        table.onKeys(this::take, this::keep);
        hunt.addListener(this::follow);
    }

    private Role asked() {
        return hunt.asked().map(RoleHunt.Question::role).orElse(session.session().role());
    }

    private void search() {
        hunt.search(
                new RoleHunt.Question(
                        role.getItemAt(role.getSelectedIndex()),
                        keepSticking.isSelected()
                                ? Optional.of(session.recipe().sticking())
                                : Optional.empty(),
                        (Integer) strokes.getValue(),
                        makings.getItemAt(makings.getSelectedIndex()).letters,
                        patience.getItemAt(patience.getSelectedIndex()).tries,
                        ((Integer) seed.getValue()).longValue()));
    }

    private void follow() {
        watch.follow();
        if (search.isFocusOwner() || another.isFocusOwner()) {
            table.focusTarget().requestFocusInWindow();
        }
        line.setText(hunt.line());
        line.setToolTipText(hunt.line());
        line.setForeground((hunt.isFault() ? Inks.FAULT : Inks.TEXT).color());
        List<Finding> findings = new ArrayList<>();
        hunt.found().forEach(serving -> findings.add(finding(serving, asked())));
        rows.show(findings);
        keep.setEnabled(!findings.isEmpty());
    }

    /** A serving as a row. */
    static Finding finding(Serving serving, Role role) {
        RoleScore score = serving.fit().of(role);
        return new Finding(
                serving.recipe(),
                serving.difficulty(),
                String.format(Locale.ROOT, "%.0f %%", 100 * score.value()),
                score.reasons().stream()
                        .limit(MOST_REASONS)
                        .map(Reason::text)
                        .collect(Collectors.joining(", ")));
    }

    /** Now rather than at the bar line. */
    private void take() {
        if (table.chosen().isPresent()) {
            audition.take();
            notices.note("In the grid: " + session.recipe().sticking().text());
        }
    }

    private void keep() {
        if (table.chosen().isEmpty()) {
            notices.note("Choose a groove in the list, then keep it.");
            return;
        }
        Finding finding = table.chosen().get();
        String title = "%s %s".formatted(capital(asked().id()), finding.recipe().sticking().text());
        try {
            session.edit(
                    "Keep from search",
                    Keeping.kept(
                            session.session(), title, finding.recipe(), asked(), finding.words()));
            notices.note("Kept in the lesson: " + title);
        } catch (IllegalArgumentException full) {
            notices.fault(full.getMessage());
        }
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    private void followSession() {
        boolean free = !keepSticking.isSelected();
        strokes.setEnabled(free);
        makings.setEnabled(free);
        where.setText(
                "on %s, %s, %d steps a beat"
                        .formatted(
                                session.recipe().kit().name(),
                                session.recipe().grid().meter().text(),
                                session.recipe().grid().stepsPerBeat()));
    }

    /** What takes the keys first. */
    JComponent focusTarget() {
        return rows.getRowCount() > 0 ? table.focusTarget() : role;
    }

    private static final class RoleName extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            Object shown = value instanceof Role named ? named.id() : value;
            return super.getListCellRendererComponent(list, shown, index, selected, focus);
        }
    }
}
