package org.kitweft.ui.groove;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import org.kitweft.groove.Conflict;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Notehead;
import org.kitweft.pattern.Dynamic;
import org.kitweft.ui.explore.Ways;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.NoteheadPainter;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/**
 * Paints the cells of the grid: beats shaded in turn, a notehead for each hit with the letter of
 * its limb, bigger where it is louder, conflicts framed, what forbids a search hatched, the
 * playhead and the cursor.
 *
 * <p>Only what lies in the clip is painted: a groove can have 512 bars.
 */
final class GridView extends Painted implements Scrollable {
    private static final long serialVersionUID = 1;

    private static final int HATCH = 9;

    private final transient GridSize size;
    private final transient GridCursor cursor;
    private final transient Playhead playhead;
    private transient GridModel model;
    private transient Set<Integer> pinned = Set.of();
    private transient Ways ways = Ways.NONE;
    private transient GridWays shading;
    private transient Map<Integer, String> forbidding = Map.of();
    private boolean visited;
    private transient OptionalInt dragRow = OptionalInt.empty();

    GridView(GridModel model, GridSize size, GridCursor cursor, Playhead playhead) {
        this.model = model;
        this.size = size;
        this.cursor = cursor;
        this.playhead = playhead;
        shading = new GridWays(model, ways);
        setFocusable(true);
        setOpaque(true);
        setToolTipText("");
        cursor.addListener(this::repaint);
    }

    void show(GridModel other, Set<Integer> pinnedStrokes) {
        model = other;
        pinned = Set.copyOf(pinnedStrokes);
        shading = new GridWays(model, ways);
        revalidate();
        repaint();
    }

    /** Shades cells by how many of the remaining variations strike them. */
    void show(Ways other) {
        ways = other;
        shading = new GridWays(model, ways);
        repaint();
    }

    /** Hatches these columns, which forbid what was sought for a reason each. */
    void showForbidding(Map<Integer, String> reasons) {
        forbidding = Map.copyOf(reasons);
        repaint();
    }

    /** Why a column forbids what was sought, if it does. */
    Optional<String> forbidding(int column) {
        return Optional.ofNullable(forbidding.get(column));
    }

    /** How many of the remaining variations strike a cell, in words. */
    Optional<String> ways(int row, int column) {
        return shading.words(row, column);
    }

    GridModel model() {
        return model;
    }

    /** It has the keys, and from now on the column of the cursor stands out. */
    void visit() {
        visited = true;
        repaint();
    }

    /** A row that a dragged stroke would go to. */
    void showDrag(OptionalInt row) {
        if (!row.equals(dragRow)) {
            dragRow = row;
            repaint();
        }
    }

    /** The cell at a point, kept inside the grid. */
    int columnAt(int x) {
        return Math.max(0, Math.min(model.columns() - 1, x / size.cellWidth()));
    }

    /** The row at a point, kept inside the grid. */
    int rowAt(int y) {
        return Math.max(0, Math.min(model.rows().size() - 1, y / size.cellHeight()));
    }

    /** Where a cell is. */
    Rectangle cell(int row, int column) {
        return new Rectangle(
                column * size.cellWidth(),
                row * size.cellHeight(),
                size.cellWidth(),
                size.cellHeight());
    }

    /** Paints again where the playhead was and is. */
    void movePlayhead(OptionalInt before, OptionalInt now) {
        before.ifPresent(
                column -> repaint(cell(0, column).x - 1, 0, size.cellWidth() + 2, getHeight()));
        now.ifPresent(
                column -> repaint(cell(0, column).x - 1, 0, size.cellWidth() + 2, getHeight()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            Rectangle clip = g.getClipBounds();
            int first = Math.max(0, clip.x / size.cellWidth() - 1);
            int last = Math.min(model.columns() - 1, (clip.x + clip.width) / size.cellWidth() + 1);
            g.setColor(Inks.CANVAS.color());
            g.fillRect(clip.x, clip.y, clip.width, clip.height);
            paintColumns(g, first, last);
            paintRowLines(g, last);
            for (GridMark mark : model.marks()) {
                if (mark.column() >= first - 1 && mark.column() <= last + 1) {
                    paintMark(g, mark);
                }
            }
            paintCursor(g);
        } finally {
            g.dispose();
        }
    }

    private int gridHeight() {
        return model.rows().size() * size.cellHeight();
    }

    private void paintColumns(Graphics2D g, int first, int last) {
        int width = size.cellWidth();
        OptionalInt now = playColumn();
        for (int column = first; column <= last; column++) {
            int beat = column % model.columnsPerBar() / model.columnsPerBeat();
            if (beat % 2 == 1) {
                g.setColor(Inks.CANVAS_SHADE.color());
                g.fillRect(column * width, 0, width, gridHeight());
            }
            if (!model.conflictsAt(column).isEmpty()) {
                g.setColor(Inks.FAULT_SHADE.color());
                g.fillRect(column * width, 0, width, gridHeight());
            }
            paintWays(g, column);
            if (now.isPresent() && now.getAsInt() == column) {
                g.setColor(Inks.LIGHT.color(150));
                g.fillRect(column * width, 0, width, gridHeight());
            }
            if (forbidding.containsKey(column)) {
                paintHatch(g, column);
            }
            paintColumnLine(g, column, column * width);
        }
        paintColumnLine(g, last + 1, (last + 1) * width);
    }

    /**
     * The more of the remaining variations strike a cell, the fuller its shade; by the square root,
     * so that few can still be told from none. The column of the cursor is shaded more, and what
     * none strikes is crossed out there; others are left alone while nothing narrows them.
     */
    private void paintWays(Graphics2D g, int column) {
        boolean here = column == cursor.column() && visited;
        if (!here && shading.isEven(column)) {
            return;
        }
        for (int row = 0; row < model.rows().size(); row++) {
            double share = shading.share(row, column);
            Rectangle cell = cell(row, column);
            if (share > 0) {
                g.setColor(Inks.FOCUS.color((int) ((here ? 140 : 60) * Math.sqrt(share))));
                g.fill(cell);
            } else if (share == 0 && here) {
                g.setColor(Inks.LINE.color());
                g.setStroke(new BasicStroke(UIScale.scale(1.2f)));
                int r = UIScale.scale(4);
                int x = cell.x + cell.width / 2;
                int y = cell.y + cell.height / 2;
                g.drawLine(x - r, y - r, x + r, y + r);
                g.drawLine(x - r, y + r, x + r, y - r);
            }
        }
    }

    /** Slanting lines, which are told from a shade without colours too. */
    private void paintHatch(Graphics2D graphics, int column) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            int width = size.cellWidth();
            int left = column * width;
            g.clipRect(left, 0, width, gridHeight());
            g.setColor(Inks.FAULT.color(130));
            g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
            for (int y = 0; y < gridHeight() + width; y += UIScale.scale(HATCH)) {
                g.drawLine(left, y, left + width, y - width);
            }
        } finally {
            g.dispose();
        }
    }

    /** Lines are thin filled boxes: whole pixels are sharper and quicker than drawn outlines. */
    private void paintColumnLine(Graphics2D g, int column, int x) {
        int thick = UIScale.scale(1);
        if (column % model.columnsPerBar() == 0) {
            g.setColor(Inks.TEXT.color());
            thick = UIScale.scale(2);
        } else if (column % model.columnsPerBeat() == 0) {
            g.setColor(Inks.LINE.color());
        } else {
            g.setColor(Inks.THREAD.color());
        }
        g.fillRect(x - thick / 2, 0, thick, gridHeight());
    }

    private void paintRowLines(Graphics2D g, int last) {
        g.setColor(Inks.THREAD.color());
        int right = (last + 1) * size.cellWidth();
        for (int row = 0; row <= model.rows().size(); row++) {
            g.fillRect(0, row * size.cellHeight(), right, UIScale.scale(1));
        }
    }

    private void paintMark(Graphics2D g, GridMark mark) {
        Hit hit = mark.hit();
        double x = (mark.column() + 0.5) * size.cellWidth();
        double y = (mark.row() + 0.5) * size.cellHeight();
        double diameter = size.mark() * loudness(hit.dynamic());
        boolean fault = !mark.conflicts().isEmpty();
        Notehead notehead = model.groove().kit().sound(hit.sound()).notehead();
        Color fill = LimbColors.of(hit.limb());
        NoteheadPainter.paint(
                g, notehead, x, y, diameter, fill, fault ? Inks.FAULT.color() : fill.darker());
        if (fault) {
            g.setColor(Inks.FAULT.color());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            double half = size.mark() / 2 + UIScale.scale(1.5f);
            g.draw(new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half));
        }
        String letter = hit.letter().map(Enum::name).orElse(hit.limb().shortName());
        double room = diameter / (letter.length() > 1 ? 2.1 : 1.55);
        g.setFont(Paints.font(1, hit.dynamic() != Dynamic.GHOST).deriveFont((float) room));
        g.setColor(LimbColors.INK);
        Paints.centred(g, letter, x, y);
        if (hit.stroke().isPresent()
                && mark.layer().isEmpty()
                && pinned.contains(hit.stroke().getAsInt())) {
            double r = size.mark() / 2 + UIScale.scale(1f);
            g.setColor(Inks.FOCUS.color());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        }
        if (mark.moved()) {
            g.setColor(Inks.TEXT.color());
            double dot = UIScale.scale(4f);
            g.fill(
                    new Rectangle2D.Double(
                            x - dot / 2, (mark.row() + 1) * size.cellHeight() - dot, dot, dot / 2));
        }
    }

    /** Dynamics by size. */
    private static double loudness(Dynamic dynamic) {
        return switch (dynamic) {
            case GHOST -> 0.62;
            case PLAIN -> 0.82;
            case ACCENT -> 1.04;
        };
    }

    private void paintCursor(Graphics2D g) {
        g.setStroke(new BasicStroke(UIScale.scale(2f)));
        Rectangle cell = cell(cursor.row(), cursor.column());
        if (isFocusOwner()) {
            g.setColor(Inks.FOCUS.color());
            g.drawRoundRect(
                    cell.x + 1,
                    cell.y + 1,
                    cell.width - 2,
                    cell.height - 2,
                    UIScale.scale(6),
                    UIScale.scale(6));
        }
        if (dragRow.isPresent()) {
            Rectangle target = cell(dragRow.getAsInt(), cursor.column());
            g.setColor(Inks.FOCUS.color(90));
            g.fill(target);
        }
    }

    private OptionalInt playColumn() {
        return playhead.place()
                .filter(place -> place.bar() <= model.groove().bars())
                .map(place -> OptionalInt.of(model.column(place)))
                .orElse(OptionalInt.empty());
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        if (event.getX() / size.cellWidth() >= model.columns()) {
            return null;
        }
        int column = columnAt(event.getX());
        List<Conflict> conflicts = model.conflictsAt(column);
        if (conflicts.isEmpty() && forbidding.containsKey(column)) {
            return "Forbids every sticking: " + forbidding.get(column);
        }
        return conflicts.isEmpty()
                ? ways(rowAt(event.getY()), column)
                        .map(words -> words + "; I or the right button pins this stroke")
                        .orElse(null)
                : conflicts.get(0).line();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                model.columns() * size.cellWidth() + UIScale.scale(2),
                gridHeight() + UIScale.scale(2));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.HORIZONTAL ? size.cellWidth() : size.cellHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.HORIZONTAL
                ? Math.min(visible.width, model.columnsPerBar() * size.cellWidth())
                : visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getPreferredSize().width < getParent().getWidth();
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getPreferredSize().height < getParent().getHeight();
    }
}
