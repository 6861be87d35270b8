package org.kitweft.ui.groove;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.OptionalInt;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.ui.theme.Keys;

/** Keys and mouse on the grid. */
final class GridHands extends MouseAdapter {
    private final GridView view;
    private final GridCursor cursor;
    private final GridEdits edits;
    private boolean wasThere;
    private boolean holdsStroke;

    GridHands(GridView view, GridCursor cursor, GridEdits edits) {
        this.view = view;
        this.cursor = cursor;
        this.edits = edits;
    }

    void install() {
        view.addMouseListener(this);
        view.addMouseMotionListener(this);
        Keys.bind(view, "LEFT", () -> move(0, -1));
        Keys.bind(view, "RIGHT", () -> move(0, 1));
        Keys.bind(view, "UP", () -> move(-1, 0));
        Keys.bind(view, "DOWN", () -> move(1, 0));
        Keys.bind(view, "HOME", () -> move(0, -view.model().columns()));
        Keys.bind(view, "END", () -> move(0, view.model().columns()));
        Keys.bind(view, "PAGE_UP", () -> move(0, -view.model().columnsPerBar()));
        Keys.bind(view, "PAGE_DOWN", () -> move(0, view.model().columnsPerBar()));
        Keys.bind(view, "ENTER", this::nextDynamic);
        Keys.bind(view, "A", () -> edits.dynamic(view.model(), cursor.column(), Dynamic.ACCENT));
        Keys.bind(view, "G", () -> edits.dynamic(view.model(), cursor.column(), Dynamic.GHOST));
        Keys.bind(view, "P", () -> edits.dynamic(view.model(), cursor.column(), Dynamic.PLAIN));
        Keys.bind(view, "alt UP", () -> moveStroke(-1));
        Keys.bind(view, "alt DOWN", () -> moveStroke(1));
        Keys.bind(view, "I", () -> edits.pin(view.model(), cursor.column()));
        Keys.bind(view, "shift I", this::pinHere);
        Keys.bind(view, "DELETE", () -> edits.giveBack(view.model(), cursor.column()));
        Keys.bind(view, "BACK_SPACE", () -> edits.giveBack(view.model(), cursor.column()));
        Keys.bind(view, "shift F10", this::popUpAtCursor);
        Keys.bind(view, "CONTEXT_MENU", this::popUpAtCursor);
    }

    private void move(int rows, int columns) {
        cursor.to(view.model(), cursor.row() + rows, cursor.column() + columns);
        view.scrollRectToVisible(view.cell(cursor.row(), cursor.column()));
    }

    private void pinHere() {
        edits.pinOn(view.model(), cursor.column(), cursor.row());
    }

    private void nextDynamic() {
        edits.nextDynamic(view.model(), cursor.row(), cursor.column());
    }

    private void moveStroke(int direction) {
        OptionalInt row = edits.nextRow(view.model(), cursor.column(), direction);
        if (row.isPresent()) {
            edits.move(view.model(), cursor.column(), row.getAsInt());
            cursor.to(view.model(), row.getAsInt(), cursor.column());
        }
    }

    @Override
    public void mousePressed(MouseEvent event) {
        view.requestFocusInWindow();
        int row = view.rowAt(event.getY());
        int column = view.columnAt(event.getX());
        wasThere = row == cursor.row() && column == cursor.column();
        cursor.to(view.model(), row, column);
        holdsStroke =
                SwingUtilities.isLeftMouseButton(event)
                        && view.model().marksAt(row, column).stream()
                                .anyMatch(mark -> mark.layer().isEmpty());
        popUp(event);
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (holdsStroke) {
            int row = view.rowAt(event.getY());
            view.showDrag(row == cursor.row() ? OptionalInt.empty() : OptionalInt.of(row));
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        view.showDrag(OptionalInt.empty());
        int row = view.rowAt(event.getY());
        if (holdsStroke && row != cursor.row()) {
            edits.move(view.model(), cursor.column(), row);
            cursor.to(view.model(), row, cursor.column());
        } else {
            popUp(event);
        }
        holdsStroke = false;
    }

    /** The first click shows where one is, the next ones change what is there. */
    @Override
    public void mouseClicked(MouseEvent event) {
        boolean mark = !view.model().marksAt(cursor.row(), cursor.column()).isEmpty();
        if (SwingUtilities.isLeftMouseButton(event)
                && !event.isPopupTrigger()
                && mark
                && (wasThere || event.getClickCount() > 1)) {
            nextDynamic();
        }
    }

    private void popUp(MouseEvent event) {
        if (event.isPopupTrigger()) {
            menu().show(view, event.getX(), event.getY());
        }
    }

    private void popUpAtCursor() {
        var cell = view.cell(cursor.row(), cursor.column());
        menu().show(view, cell.x, cell.y + cell.height);
    }

    private JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        item(menu, "Plain", () -> edits.dynamic(view.model(), cursor.column(), Dynamic.PLAIN));
        item(menu, "Accent", () -> edits.dynamic(view.model(), cursor.column(), Dynamic.ACCENT));
        item(menu, "Ghost", () -> edits.dynamic(view.model(), cursor.column(), Dynamic.GHOST));
        menu.addSeparator();
        JMenu move = new JMenu("Move this stroke to");
        OptionalInt stroke = view.model().strokeAt(cursor.column());
        for (GridRow row : view.model().rows()) {
            if (move.getItemCount() > 40) {
                break;
            }
            List<SoundName> sounds = row.sounds();
            for (SoundName sound : sounds) {
                JMenuItem item = new JMenuItem(sound.text());
                item.addActionListener(e -> stroke.ifPresent(index -> edits.moveTo(index, sound)));
                move.add(item);
            }
        }
        move.setEnabled(view.model().stroke(cursor.column()).flatMap(s -> s.struck()).isPresent());
        menu.add(move);
        pins(menu);
        item(
                menu,
                "Bring it back to its letter",
                () -> edits.giveBack(view.model(), cursor.column()));
        return menu;
    }

    private void pins(JPopupMenu menu) {
        GridModel model = view.model();
        int column = cursor.column();
        OptionalInt stroke = model.strokeAt(column);
        boolean struck = model.stroke(column).flatMap(s -> s.struck()).isPresent();
        if (!struck || stroke.isEmpty()) {
            return;
        }
        int number = stroke.getAsInt() + 1;
        menu.addSeparator();
        edits.pinAt(model, column)
                .ifPresentOrElse(
                        pin ->
                                item(
                                        menu,
                                        "Let stroke %d go from %s"
                                                .formatted(number, pin.sound().text()),
                                        () -> edits.letGo(pin)),
                        () ->
                                item(
                                        menu,
                                        "Pin stroke %d where it is (I)".formatted(number),
                                        () -> edits.pin(model, column)));
        String there = model.rows().get(cursor.row()).label();
        item(menu, "Pin stroke %d on %s (Shift+I)".formatted(number, there), this::pinHere);
        menu.addSeparator();
    }

    private static void item(JPopupMenu menu, String text, Runnable body) {
        JMenuItem item = new JMenuItem(text);
        item.addActionListener(e -> body.run());
        menu.add(item);
    }
}
