package org.kitweft.ui.groove;

import com.formdev.flatlaf.util.UIScale;

/**
 * How big cells are, shared by the grid and its headers.
 *
 * <p>Columns take the width there is, so that a short groove fills the panel; where they would
 * become too narrow to read, the grid scrolls.
 */
final class GridSize {
    private static final int NARROWEST = 26;

    /** In the large view nobody scrolls: a bar fits beside the kit on a screen 1280 wide. */
    private static final int NARROWEST_LARGE = 18;

    private static final int WIDEST = 64;
    private static final int LOWEST_ROW = 18;
    private static final int HIGHEST_ROW = 46;

    private double factor = 1;
    private int cellWidth = UIScale.scale(NARROWEST);
    private int cellHeight = UIScale.scale(LOWEST_ROW);

    /** Larger cells for the large view. */
    void factor(double other) {
        factor = other;
    }

    /** Fits cells into a view; true if they have changed. */
    boolean fit(GridModel model, int width, int height) {
        int shown = Math.min(model.columns(), Math.max(model.columnsPerBar(), 1));
        int wide =
                clamp(
                        width / Math.max(1, shown),
                        factor > 1 ? NARROWEST_LARGE / factor : NARROWEST,
                        WIDEST);
        int high = clamp(height / Math.max(1, model.rows().size()), LOWEST_ROW, HIGHEST_ROW);
        boolean changed = wide != cellWidth || high != cellHeight;
        cellWidth = wide;
        cellHeight = high;
        return changed;
    }

    private int clamp(int value, double least, int most) {
        int low = Math.round(UIScale.scale((float) (least * factor)));
        int high = (int) Math.round(UIScale.scale(most) * factor);
        return Math.max(low, Math.min(high, value));
    }

    int cellWidth() {
        return cellWidth;
    }

    int cellHeight() {
        return cellHeight;
    }

    /** The diameter of a mark of plain loudness. */
    double mark() {
        return Math.min(cellHeight * 0.86, cellWidth * 0.92);
    }
}
