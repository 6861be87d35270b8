package org.kitweft.ui.groove;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** The cell of the grid that the keyboard works on; kept inside the grid. For one thread. */
public final class GridCursor {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private int row;
    private int column;

    /** Is called after each move. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Its row, from 0. */
    public int row() {
        return row;
    }

    /** Its column, from 0. */
    public int column() {
        return column;
    }

    /** Puts it on a cell, or on the nearest there is. */
    public void to(GridModel model, int toRow, int toColumn) {
        int nextRow = Math.max(0, Math.min(model.rows().size() - 1, toRow));
        int nextColumn = Math.max(0, Math.min(model.columns() - 1, toColumn));
        if (nextRow != row || nextColumn != column) {
            row = nextRow;
            column = nextColumn;
            listeners.forEach(Runnable::run);
        }
    }
}
