package org.kitweft.ui.groove;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.image.BufferedImage;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.search.NoneCan;
import org.kitweft.groove.Conflict;
import org.kitweft.groove.Place;
import org.kitweft.ui.explore.Ways;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/**
 * The groove as a grid: names of surfaces at the left, counting and sticking above, and what cannot
 * be played in one line below.
 *
 * <p>Keys on a cell: arrows move, Enter changes the dynamic, A accents, G makes a ghost stroke, P a
 * plain one; Alt with up and down moves the stroke to another surface, Delete brings it back; I
 * pins the stroke where it is, Shift+I on the surface under the cursor.
 *
 * <p>Steps that forbid what a search was for are hatched, and their counting is framed.
 *
 * <p>Cells are shaded by how many of the remaining variations strike them, once that is known.
 */
public final class GrooveGrid extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final transient Playhead playhead;
    private final transient GridSize size = new GridSize();
    private final transient GridCursor cursor = new GridCursor();
    private final GridView view;
    private final GridHeaders.Rows rowHeader;
    private final GridHeaders.Columns columnHeader;
    private final JScrollPane scroll;
    private final JLabel conflictLine = new JLabel(" ");
    private transient Consumer<String> waysAsked = words -> {};
    private transient Consumer<String> waysCounted = words -> {};
    private transient OptionalInt lastColumn = OptionalInt.empty();
    private boolean laidOut;

    /** A grid for what the session weaves. */
    public GrooveGrid(SessionModel session, Playhead playhead) {
        super(new BorderLayout());
        this.session = session;
        this.playhead = playhead;
        GridModel model = GridModel.of(session.groove());
        view = new GridView(model, size, cursor, playhead);
        rowHeader = new GridHeaders.Rows(model, size);
        columnHeader = new GridHeaders.Columns(model, size);
        scroll = new JScrollPane(view);
        scroll.setRowHeaderView(rowHeader);
        scroll.setColumnHeaderView(columnHeader);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setCorner(JScrollPane.UPPER_LEFT_CORNER, corner());
        add(scroll, BorderLayout.CENTER);
        conflictLine.setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 10));
        conflictLine.setVisible(false);
        // It is cut where it is too long; the kit beside the grid does not make room for it.
        conflictLine.setMinimumSize(new Dimension());
        add(conflictLine, BorderLayout.SOUTH);
        new GridHands(view, cursor, new GridEdits(session)).install();
        session.addListener(this::follow);
        playhead.addListener(this::followPlayhead);
        cursor.addListener(this::describeCursor);
        view.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        view.visit();
                        describeCursor();
                        tellWays(waysAsked);
                    }

                    @Override
                    public void focusLost(FocusEvent event) {
                        view.repaint();
                    }
                });
        scroll.getViewport()
                .addComponentListener(
                        new ComponentAdapter() {
                            @Override
                            public void componentResized(ComponentEvent event) {
                                fit();
                                if (!laidOut && scroll.getViewport().getHeight() > 0) {
                                    laidOut = true;
                                    EventQueue.invokeLater(GrooveGrid.this::showStruckRows);
                                }
                            }
                        });
        view.getAccessibleContext().setAccessibleName("Groove grid");
        describeCursor();
        showConflicts();
    }

    private static JComponent corner() {
        JLabel corner = new JLabel("Groove");
        Paints.type(corner, 100, true);
        corner.setBorder(BorderFactory.createEmptyBorder(0, UIScale.scale(12), 0, 0));
        corner.setOpaque(true);
        corner.setBackground(Inks.CANVAS.color());
        return corner;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (scroll != null) {
            scroll.setCorner(JScrollPane.UPPER_LEFT_CORNER, corner());
        }
    }

    /** The component that takes the keys. */
    public JComponent focusTarget() {
        return view;
    }

    /** Larger cells, for showing across the room. */
    public void enlarge(double factor) {
        size.factor(factor);
        fit();
    }

    /** Is told the stroke of the sticking under the cursor, from 0, whenever the cursor moves. */
    public void onStroke(IntConsumer listener) {
        cursor.addListener(() -> view.model().strokeAt(cursor.column()).ifPresent(listener));
    }

    /** Shades the cells by how many of the remaining variations strike them. */
    public void show(Ways ways) {
        view.show(ways);
        describeCursor();
        tellWays(waysCounted);
    }

    /**
     * Marks the steps that forbid every way of playing the groove; none: takes the marks away. They
     * also go when the groove is edited.
     */
    public void showForbidding(Optional<NoneCan> none) {
        Map<Integer, String> reasons = new HashMap<>();
        none.map(NoneCan::obstacles)
                .orElse(List.of())
                .forEach(
                        obstacle ->
                                obstacle.places()
                                        .forEach(
                                                place ->
                                                        reasons.putIfAbsent(
                                                                view.model().column(place),
                                                                obstacle.reason())));
        view.showForbidding(reasons);
        columnHeader.showForbidding(reasons.keySet());
        describeCursor();
    }

    /**
     * Tells how many of the remaining variations strike the cell under the cursor, in words.
     *
     * @param asked is told when somebody goes to the cell
     * @param counted is told when it becomes known later
     */
    public void onWays(Consumer<String> asked, Consumer<String> counted) {
        waysAsked = asked;
        waysCounted = counted;
        cursor.addListener(() -> tellWays(waysAsked));
    }

    private boolean isPinned() {
        return new GridEdits(session).pinAt(view.model(), cursor.column()).isPresent();
    }

    private void tellWays(Consumer<String> listener) {
        if (view.isFocusOwner()) {
            view.ways(cursor.row(), cursor.column())
                    .ifPresent(
                            words ->
                                    listener.accept(
                                            "%s. I %s the stroke."
                                                    .formatted(
                                                            capital(words),
                                                            isPinned() ? "lets go of" : "pins")));
        }
    }

    /** Puts the cursor on a stroke of the sticking. */
    public void goTo(int bar, int step) {
        GridModel model = view.model();
        int column = model.column(new Place(bar, step));
        int row = new GridEdits(session).rowOfStroke(model, column).orElse(cursor.row());
        cursor.to(model, row, column);
        view.scrollRectToVisible(view.cell(row, column));
    }

    /** The whole grid as a picture, twice the size of the screen's, for at most a few bars. */
    public BufferedImage picture() {
        return new GridPicture(view.model()).paint();
    }

    private void follow() {
        if (!view.model().groove().equals(session.groove())) {
            showForbidding(Optional.empty());
        }
        GridModel model = GridModel.of(session.groove());
        boolean elsewhere = !rowsStruck(view.model()).equals(rowsStruck(model));
        view.show(
                model,
                session.session().rules().stream()
                        .filter(rule -> rule instanceof Rule.Pin)
                        .map(rule -> ((Rule.Pin) rule).index())
                        .collect(Collectors.toSet()));
        rowHeader.show(model);
        columnHeader.show(model);
        cursor.to(model, cursor.row(), cursor.column());
        fit();
        showConflicts();
        describeCursor();
        if (elsewhere) {
            // Once the grid has the height of its rows, which another kit changes.
            EventQueue.invokeLater(this::showStruckRows);
        }
    }

    private static Set<Integer> rowsStruck(GridModel model) {
        return model.marks().stream().map(GridMark::row).collect(Collectors.toSet());
    }

    /** A marimba has more rows than fit: where none that is struck is in sight, go there. */
    private void showStruckRows() {
        Set<Integer> rows = rowsStruck(view.model());
        Rectangle seen = scroll.getViewport().getViewRect();
        boolean inSight = rows.stream().anyMatch(r -> seen.intersects(wholeRow(r)));
        if (!rows.isEmpty() && !inSight) {
            view.scrollRectToVisible(wholeRow(Collections.max(rows)));
            view.scrollRectToVisible(wholeRow(Collections.min(rows)));
        }
    }

    /** A row as far to the left as is in sight: going there does not turn pages. */
    private Rectangle wholeRow(int row) {
        Rectangle cell = view.cell(row, 0);
        return new Rectangle(scroll.getViewport().getViewPosition().x, cell.y, 1, cell.height);
    }

    private void fit() {
        Rectangle viewport = scroll.getViewport().getViewRect();
        if (viewport.width > 0
                && size.fit(
                        view.model(),
                        viewport.width - UIScale.scale(2),
                        viewport.height - UIScale.scale(2))) {
            view.revalidate();
            rowHeader.revalidate();
            columnHeader.revalidate();
            repaint();
        }
    }

    private void showConflicts() {
        List<Conflict> conflicts = session.groove().conflicts();
        conflictLine.setVisible(!conflicts.isEmpty());
        if (!conflicts.isEmpty()) {
            String more =
                    conflicts.size() > 1 ? "  (and %d more)".formatted(conflicts.size() - 1) : "";
            String line = conflicts.get(0).line();
            conflictLine.setText("⚠ " + capital(line) + more);
            conflictLine.setToolTipText(line);
            conflictLine.setForeground(Inks.FAULT.color());
            conflictLine.setHorizontalAlignment(SwingConstants.LEADING);
        }
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private void describeCursor() {
        GridModel model = view.model();
        Place place = model.place(Math.min(cursor.column(), model.columns() - 1));
        String stroke = model.stroke(cursor.column()).map(s -> ", stroke " + s.text()).orElse("");
        String conflict =
                Optional.of(model.conflictsAt(cursor.column()))
                        .filter(found -> !found.isEmpty())
                        .map(found -> ", " + found.get(0).reason())
                        .orElse("");
        String forbidding =
                view.forbidding(cursor.column())
                        .map(reason -> ", forbids every sticking: " + reason)
                        .orElse("");
        String ways =
                view.ways(cursor.row(), cursor.column()).map(words -> ", " + words).orElse("");
        view.getAccessibleContext()
                .setAccessibleDescription(
                        "%s, %s, count %s%s%s%s%s"
                                .formatted(
                                        model.rows().get(cursor.row()).label(),
                                        place,
                                        model.syllable(cursor.column()),
                                        stroke,
                                        conflict,
                                        forbidding,
                                        ways));
    }

    private void followPlayhead() {
        OptionalInt now =
                playhead.place()
                        .filter(place -> place.bar() <= view.model().groove().bars())
                        .map(place -> OptionalInt.of(view.model().column(place)))
                        .orElse(OptionalInt.empty());
        view.movePlayhead(lastColumn, now);
        boolean barsHidden = view.getWidth() > scroll.getViewport().getWidth();
        if (now.isPresent() && barsHidden && !view.isFocusOwner()) {
            keepInSight(now.getAsInt());
        }
        lastColumn = now;
    }

    /** Turns a page rather than sliding: a moving grid cannot be read. */
    private void keepInSight(int column) {
        Rectangle seen = scroll.getViewport().getViewRect();
        Rectangle cell = view.cell(0, column);
        if (cell.x < seen.x || cell.x + cell.width > seen.x + seen.width) {
            int most = Math.max(0, view.getWidth() - seen.width);
            scroll.getViewport().setViewPosition(new Point(Math.min(cell.x, most), seen.y));
        }
    }
}
