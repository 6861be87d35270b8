package org.kitweft.ui.groove;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.Set;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Stroke;
import org.kitweft.ui.session.VoicingEdits;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/** The names of rows beside the grid, and counting and sticking above it. */
final class GridHeaders {
    private GridHeaders() {}

    /** The names of surfaces. */
    static final class Rows extends Painted {
        private static final long serialVersionUID = 1;
        private final transient GridSize size;
        private transient GridModel model;

        Rows(GridModel model, GridSize size) {
            this.model = model;
            this.size = size;
        }

        void show(GridModel other) {
            model = other;
            revalidate();
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            int widest =
                    model.rows().stream()
                            .mapToInt(
                                    row ->
                                            getFontMetrics(Paints.font(1, false))
                                                    .stringWidth(row.label()))
                            .max()
                            .orElse(0);
            return new Dimension(
                    widest + UIScale.scale(22), model.rows().size() * size.cellHeight());
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Paints.smooth(graphics);
            try {
                g.setColor(Inks.CANVAS.color());
                g.fillRect(0, 0, getWidth(), getHeight());
                g.setFont(Paints.font(1, false));
                for (int row = 0; row < model.rows().size(); row++) {
                    boolean struck = isStruck(row);
                    g.setColor(struck ? Inks.TEXT.color() : Inks.QUIET.color());
                    int y = row * size.cellHeight();
                    String label = model.rows().get(row).label();
                    int baseline =
                            y
                                    + (size.cellHeight()
                                                    + g.getFontMetrics().getAscent()
                                                    - g.getFontMetrics().getDescent())
                                            / 2;
                    g.drawString(
                            label,
                            getWidth() - UIScale.scale(10) - g.getFontMetrics().stringWidth(label),
                            baseline);
                    g.setColor(Inks.THREAD.color());
                    g.drawLine(0, y + size.cellHeight(), getWidth(), y + size.cellHeight());
                }
            } finally {
                g.dispose();
            }
        }

        private boolean isStruck(int row) {
            return model.marks().stream().anyMatch(mark -> mark.row() == row);
        }
    }

    /** How the steps are counted, and the sticking's stroke at each. */
    static final class Columns extends Painted {
        private static final long serialVersionUID = 1;
        private final transient GridSize size;
        private transient GridModel model;
        private transient Set<Integer> forbidding = Set.of();

        Columns(GridModel model, GridSize size) {
            this.model = model;
            this.size = size;
        }

        void show(GridModel other) {
            model = other;
            revalidate();
            repaint();
        }

        /** Frames the counting of these columns. */
        void showForbidding(Set<Integer> columns) {
            forbidding = Set.copyOf(columns);
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(model.columns() * size.cellWidth() + UIScale.scale(2), height());
        }

        private int line() {
            return Math.max(
                    UIScale.scale(20),
                    getFontMetrics(Paints.font(1, true)).getHeight() + UIScale.scale(4));
        }

        private int height() {
            return 2 * line() + UIScale.scale(4);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Paints.smooth(graphics);
            try {
                Rectangle clip = g.getClipBounds();
                g.setColor(Inks.CANVAS.color());
                g.fill(clip);
                int first = Math.max(0, clip.x / size.cellWidth());
                int last = Math.min(model.columns() - 1, (clip.x + clip.width) / size.cellWidth());
                for (int column = first; column <= last; column++) {
                    paintCount(g, column);
                    paintStroke(g, column);
                }
            } finally {
                g.dispose();
            }
        }

        private void paintCount(Graphics2D g, int column) {
            boolean beat = column % model.columnsPerBeat() == 0;
            double x = (column + 0.5) * size.cellWidth();
            g.setFont(Paints.font(beat ? 1 : 0.92, beat));
            g.setColor(beat ? Inks.TEXT.color() : Inks.QUIET.color());
            Paints.centred(
                    g,
                    Paints.fitting(g, model.syllable(column), size.cellWidth()),
                    x,
                    line() / 2.0);
            if (forbidding.contains(column)) {
                double thick = UIScale.scale(2f);
                g.setColor(Inks.FAULT.color());
                g.setStroke(new BasicStroke((float) thick));
                g.draw(
                        new Rectangle2D.Double(
                                column * size.cellWidth() + thick,
                                thick / 2,
                                size.cellWidth() - 2 * thick,
                                line() - thick));
            }
            if (column % model.columnsPerBar() == 0 && model.groove().bars() > 1) {
                g.setFont(Paints.font(0.75, false));
                g.setColor(Inks.QUIET.color());
                g.drawString(
                        Integer.toString(model.place(column).bar()),
                        column * size.cellWidth() + UIScale.scale(3),
                        g.getFontMetrics().getAscent());
            }
        }

        private void paintStroke(Graphics2D g, int column) {
            Optional<Stroke.Struck> struck = model.stroke(column).flatMap(Stroke::struck);
            double x = (column + 0.5) * size.cellWidth();
            double y = line() * 1.5;
            if (struck.isEmpty()) {
                g.setColor(Inks.QUIET.color());
                g.setFont(Paints.font(1, false));
                Paints.centred(g, "–", x, y);
                return;
            }
            Groove groove = model.groove();
            Limb limb =
                    VoicingEdits.limb(
                            new Recipe(
                                    groove.sticking(),
                                    groove.kit(),
                                    groove.voicing(),
                                    groove.grid(),
                                    java.util.OptionalInt.empty()),
                            struck.get().letter());
            Color color = LimbColors.of(limb);
            double width = size.cellWidth() - UIScale.scale(3f);
            double height = line() - UIScale.scale(3f);
            g.setColor(color);
            g.fill(
                    new RoundRectangle2D.Double(
                            x - width / 2,
                            y - height / 2,
                            width,
                            height,
                            UIScale.scale(7f),
                            UIScale.scale(7f)));
            g.setColor(LimbColors.INK);
            g.setFont(Paints.font(1, true));
            String text = struck.get().text();
            if (g.getFontMetrics().stringWidth(text) > width) {
                g.setFont(Paints.font(0.8, true));
            }
            Paints.centred(g, text, x, y);
        }
    }
}
