package org.kitweft.ui.search;

import java.awt.BorderLayout;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import javax.swing.TransferHandler;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.search.Addition;
import org.kitweft.explore.search.Answer;
import org.kitweft.explore.search.Found;
import org.kitweft.explore.search.NoneCan;
import org.kitweft.groove.Recipe;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.explore.Audition;
import org.kitweft.ui.explore.ListKeys;
import org.kitweft.ui.search.FindingRows.Column;
import org.kitweft.ui.search.FindingRows.Heading;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Inks;

/** From a groove back to the stickings and voicings that produce it, or why none does. */
final class OriginPane extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int MOST_LINES = 4;
    private static final String EDIT = "Choose what produces the groove";

    private static final String UNIT =
            "Points a bar: milliseconds of way, estimated from published tapping data; crossing,"
                    + " repeating and striking together count as so many, dynamics and layers do"
                    + " not. An order, not a verdict on a person.";

    private final transient SessionModel session;
    private final transient Audition audition;
    private final transient Notices notices;
    private final transient Origins origins;
    private final transient Supplier<Optional<Path>> midiFile;
    private final transient Consumer<Optional<NoneCan>> forbidding;
    private final JButton fromGrid = new JButton("From the grid");
    private final JButton fromFile = new JButton("From a MIDI file…");
    private final JCheckBox ownLength = new JCheckBox("Stickings of");
    private final JSpinner strokes =
            new JSpinner(new SpinnerNumberModel(16, 1, Sticking.MAX_STROKES, 1));
    private final JButton keep = new JButton("★ Keep");
    private final JTextArea lines = new JTextArea(3, 20);
    private final transient WrappedLines saidLines = new WrappedLines(lines, 1, MOST_LINES);
    private final FindingRows rows;
    private final FindingTable table;
    private final WatchBar watch;

    OriginPane(
            SessionModel session,
            Audition audition,
            Tasks tasks,
            Notices notices,
            Supplier<Optional<Path>> midiFile,
            Consumer<Optional<NoneCan>> forbidding) {
        super(new BorderLayout(12, 0));
        this.session = session;
        this.audition = audition;
        this.notices = notices;
        this.midiFile = midiFile;
        this.forbidding = forbidding;
        origins = new Origins(session, tasks);
        rows = new FindingRows(headings(), tasks, notices);
        table = new FindingTable("Stickings and voicings that produce the groove", rows);
        watch = new WatchBar(origins::part, origins::stop);
        add(sources(), BorderLayout.WEST);
        add(answers(), BorderLayout.CENTER);
        setTransferHandler(new Dropping());
        wire();
        follow();
    }

    private static List<Heading> headings() {
        return List.of(
                new Heading(
                        Column.LEAD,
                        "No.",
                        "Fewer additions first, among equals the least effort",
                        50),
                new Heading(Column.DIFFICULTY, "Effort", UNIT, 150),
                new Heading(Column.STICKING, "Sticking", "One letter a step, - a rest", 220),
                new Heading(Column.VOICING, "Voicing", "What each letter strikes", 380),
                new Heading(
                        Column.WORDS,
                        "Additions",
                        "Beyond letters by their own limbs: handovers, doublings, tacet letters, layers, and B where both hands are"
                                + " on one sound; those with fewer come first",
                        240));
    }

    private JPanel sources() {
        JPanel sources =
                new JPanel(new MigLayout("insets 0, gapy 6, wrap 1, hidemode 3", "[grow,fill]"));
        fromGrid.setMnemonic('D');
        fromGrid.setToolTipText("Find what else produces the groove in the grid");
        fromFile.setMnemonic('M');
        fromFile.setToolTipText(
                "Read a MIDI file onto the kit and the grid of now; or drop the file here");
        ownLength.setMnemonic('C');
        ownLength.setToolTipText(
                "Else as long as the sticking of now, or as the bars after which the file repeats");
        strokes.getAccessibleContext().setAccessibleName("Strokes of the stickings, rests counted");
        strokes.setToolTipText("Strokes, rests counted");
        sources.add(fromGrid);
        sources.add(fromFile);
        JPanel length = new JPanel(new MigLayout("insets 0, gapx 6", "[][][]"));
        length.add(ownLength);
        length.add(strokes);
        length.add(new JLabel("strokes"));
        sources.add(length);
        return sources;
    }

    private JPanel answers() {
        lines.setEditable(false);
        lines.setLineWrap(true);
        lines.setWrapStyleWord(true);
        lines.setOpaque(false);
        lines.getAccessibleContext().setAccessibleName("What the search says");
        JScrollPane said = new JScrollPane(lines);
        said.setBorder(BorderFactory.createEmptyBorder());
        JPanel right =
                new JPanel(
                        new MigLayout(
                                "insets 0, gapy 4, hidemode 3",
                                "[grow,fill][][]",
                                "[][grow,fill]"));
        right.add(said, "wmin 0, hmin pref");
        right.add(watch, "w 220!, top");
        right.add(keep, "top, wrap");
        right.add(table, "span 3, grow");
        return right;
    }

    private void wire() {
        fromGrid.addActionListener(e -> takeGrid());
        fromFile.addActionListener(e -> midiFile.get().ifPresent(this::takeFile));
        ownLength.addActionListener(e -> strokes.setEnabled(ownLength.isSelected()));
        strokes.setEnabled(false);
        keep.setToolTipText("Keep the chosen one in the lesson " + ListKeys.KEEPS);
        keep.addActionListener(e -> keep());
        table.onChosen(
                finding ->
                        audition.hear(
                                EDIT, now -> Keeping.taken(now, finding.recipe(), now.role())));
        table.onKeys(this::take, this::keep);
        origins.addListener(this::follow);
    }

    private OptionalInt length() {
        return ownLength.isSelected()
                ? OptionalInt.of((Integer) strokes.getValue())
                : OptionalInt.empty();
    }

    /** Looks for what produces the groove in the grid. */
    void takeGrid() {
        origins.takeGrid(length());
    }

    /** Looks for what produces the groove of a MIDI file. */
    void takeFile(Path path) {
        origins.takeFile(path, length());
    }

    private void follow() {
        watch.follow();
        lines.setText(
                origins.lines().isEmpty()
                        ? "Take a groove: its notes are laid on the grid, and every sticking and"
                                + " voicing that produces them is found."
                        : String.join("\n", origins.lines()));
        saidLines.fit();
        lines.setCaretPosition(0);
        lines.setForeground((origins.isFault() ? Inks.FAULT : Inks.TEXT).color());
        forbidding.accept(origins.forbidding());
        keep.setEnabled(origins.found().isPresent());
        rows.show(
                outlook ->
                        origins.found()
                                .map(found -> findings(found, outlook))
                                .orElse(List.<Finding>of().iterator()));
        revalidate();
    }

    /** The answers as rows, each made when it is asked for. */
    static Iterator<Finding> findings(Found found, Outlook watch) {
        Iterator<Answer> answers = found.easiestFirst(watch);
        AtomicInteger number = new AtomicInteger();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return answers.hasNext();
            }

            @Override
            public Finding next() {
                Answer answer = answers.next();
                return new Finding(
                        answer.recipe(),
                        Difficulty.of(answer.recipe().weave()),
                        effort(answer),
                        String.valueOf(number.incrementAndGet()),
                        answer.additions().stream()
                                .map(Addition::words)
                                .collect(Collectors.joining(", ")));
            }
        };
    }

    /**
     * What orders the answers, in thousandths of a point a bar. Their whole difficulty cannot: it
     * is known once an answer is written out, and there are too many of them for that.
     */
    private static long effort(Answer answer) {
        Recipe recipe = answer.recipe();
        return 1000L * answer.points() * recipe.grid().stepsPerBar() / recipe.sticking().size();
    }

    private void take() {
        if (table.chosen().isPresent()) {
            audition.take();
            notices.note("In the grid: " + session.recipe().sticking().text());
        }
    }

    private void keep() {
        if (table.chosen().isEmpty()) {
            notices.note("Choose one in the list, then keep it.");
            return;
        }
        Finding finding = table.chosen().get();
        String title = "Groove by " + finding.recipe().sticking().text();
        try {
            session.edit(
                    "Keep from search",
                    Keeping.kept(
                            session.session(),
                            title,
                            finding.recipe(),
                            session.session().role(),
                            finding.words()));
            notices.note("Kept in the lesson: " + title);
        } catch (IllegalArgumentException full) {
            notices.fault(full.getMessage());
        }
    }

    /** What takes the keys first. */
    JComponent focusTarget() {
        return rows.getRowCount() > 0 ? table.focusTarget() : fromGrid;
    }

    /** A file let fall on the pane. */
    private final class Dropping extends TransferHandler {
        private static final long serialVersionUID = 1;

        @Override
        public boolean canImport(TransferSupport support) {
            return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                Object data =
                        support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
                if (data instanceof List<?> files
                        && !files.isEmpty()
                        && files.get(0) instanceof File file) {
                    takeFile(file.toPath());
                    return true;
                }
                return false;
            } catch (UnsupportedFlavorException | IOException e) {
                notices.fault("what was dropped cannot be read: " + e.getMessage());
                return false;
            }
        }
    }
}
