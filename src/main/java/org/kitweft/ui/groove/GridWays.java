package org.kitweft.ui.groove;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.ui.explore.Ways;

/**
 * How many of the remaining variations strike each cell of a grid. Knows nothing of pixels; for one
 * thread.
 */
final class GridWays {
    private final GridModel model;
    private final Ways ways;

    /** Shares of the rows for each stroke, made when first asked for: marimbas have many rows. */
    private final Map<Integer, double[]> shares = new HashMap<>();

    GridWays(GridModel model, Ways ways) {
        this.model = model;
        this.ways = ways;
    }

    /** The part of all variations that strike a cell, 0 to 1; NaN where that is no question. */
    double share(int row, int column) {
        OptionalInt stroke = model.strokeAt(column);
        if (stroke.isEmpty() || !ways.byStroke().containsKey(stroke.getAsInt())) {
            return Double.NaN;
        }
        return shares.computeIfAbsent(stroke.getAsInt(), this::ofStroke)[row];
    }

    private double[] ofStroke(int stroke) {
        return model.rows().stream()
                .mapToDouble(
                        row -> ways.of(stroke, row.sounds()).map(ways::share).orElse(Double.NaN))
                .toArray();
    }

    /** Whether a column's stroke lies as often on each of several rows: nothing narrows it. */
    boolean isEven(int column) {
        double first = Double.NaN;
        int struck = 0;
        for (int row = 0; row < model.rows().size(); row++) {
            double share = share(row, column);
            if (share > 0) {
                struck++;
                if (struck > 1 && share != first) {
                    return false;
                }
                first = share;
            }
        }
        return struck != 1;
    }

    /** The exact number in words; empty where that is no question. */
    Optional<String> words(int row, int column) {
        OptionalInt stroke = model.strokeAt(column);
        if (stroke.isEmpty()) {
            return Optional.empty();
        }
        GridRow there = model.rows().get(row);
        Optional<BigInteger> number = ways.of(stroke.getAsInt(), there.sounds());
        return number.map(n -> ways.words(n, there.label()));
    }
}
