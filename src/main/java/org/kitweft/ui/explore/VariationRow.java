package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.kitweft.explore.reach.Travel;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/**
 * One variation in the list: a cell a step with the short name of what is struck, pale where the
 * limb stays and full where it has moved; travel, highest tempo and score behind. Where cells are
 * too narrow for names, blocks stand as high as their sounds on the staff.
 */
final class VariationRow extends Painted implements ListCellRenderer<Variation> {
    private static final long serialVersionUID = 1;
    private static final int PALE = 70;

    /** The size of names relative to labels: the first that fits. */
    private static final double[] NAME_SIZES = {0.9, 0.8, 0.72};

    private final transient VariationList model;
    private transient Optional<Steps> steps = Optional.empty();
    private transient Optional<Variation> shown = Optional.empty();
    private int row;
    private boolean selected;
    private boolean focused;
    private transient Color background = Color.WHITE;

    VariationRow(VariationList model) {
        this.model = model;
    }

    void show(Optional<Steps> other) {
        steps = other;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Variation> list,
            Variation value,
            int index,
            boolean isSelected,
            boolean cellHasFocus) {
        shown = Optional.ofNullable(value);
        row = index;
        selected = isSelected;
        focused = cellHasFocus && list.isFocusOwner();
        background = list.getBackground();
        setFont(Paints.font(0.9, false));
        getAccessibleContext()
                .setAccessibleName(
                        steps.flatMap(s -> shown.map(v -> s.spoken(v.sounds()))).orElse(""));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            g.setColor(selected ? Inks.CHOSEN.color() : background);
            g.fillRect(0, 0, getWidth(), getHeight());
            if (focused) {
                g.setColor(Inks.FOCUS.color());
                g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            }
            if (steps.isPresent() && shown.isPresent()) {
                paint(g, steps.get(), shown.get());
            }
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, Steps all, Variation variation) {
        g.setFont(getFont());
        OptionalDouble score = model.score(row);
        RowColumns columns = RowColumns.of(g.getFontMetrics(), getWidth(), all, model);
        Color text = Inks.TEXT.color();
        g.setColor(Inks.QUIET.color());
        right(g, Integer.toString(row + 1), columns.number());
        Travel travel = all.possibilities().travel(variation.sounds());
        right(g, Long.toString(Math.round(travel.totalCm())), columns.cm());
        if (travel.tempoCeiling().isPresent()) {
            right(
                    g,
                    Integer.toString(Math.min(999, travel.tempoCeiling().getAsInt())),
                    columns.bpm());
        }
        if (score.isPresent()) {
            g.setColor(text);
            g.setFont(Paints.font(0.9, true));
            right(g, Math.round(100 * score.getAsDouble()) + " %", columns.score());
        }
        paintCells(g, all, all.cells(variation.sounds()), columns, text);
    }

    private void right(Graphics2D g, String text, int edge) {
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(
                text,
                edge - metrics.stringWidth(text),
                (getHeight() + metrics.getAscent() - metrics.getDescent()) / 2);
    }

    /**
     * Sets the font, and tells whether names in it are no wider than a step: they may reach into
     * the thin gap after it.
     */
    private static boolean namesFit(
            Graphics2D g, Steps all, List<Steps.Cell> cells, double room, double size) {
        g.setFont(Paints.font(size, true));
        FontMetrics metrics = g.getFontMetrics();
        return cells.stream().allMatch(cell -> metrics.stringWidth(all.name(cell.sound())) <= room);
    }

    private void paintCells(
            Graphics2D g, Steps all, List<Steps.Cell> cells, RowColumns columns, Color text) {
        boolean named =
                Arrays.stream(NAME_SIZES)
                        .anyMatch(size -> namesFit(g, all, cells, columns.cell(), size));
        double gap = Math.min(UIScale.scale(2), columns.cell() / 4);
        for (Steps.Cell cell : cells) {
            if (cell.step() >= columns.shown()) {
                break;
            }
            double x = columns.x(cell.step());
            Color limb = LimbColors.of(cell.limb());
            boolean full = cell.moved() || !named;
            g.setColor(
                    full ? limb : new Color(limb.getRed(), limb.getGreen(), limb.getBlue(), PALE));
            double inner = getHeight() - 2.0 * UIScale.scale(2);
            double height = named ? inner : inner / 3;
            double y =
                    UIScale.scale(2)
                            + (named ? 0 : (1 - all.height(cell.sound())) * (inner - height));
            double arc = named ? UIScale.scale(6) : 0;
            g.fill(new RoundRectangle2D.Double(x, y, columns.cell() - gap, height, arc, arc));
            if (named) {
                g.setColor(full ? LimbColors.INK : text);
                Paints.centred(
                        g,
                        all.name(cell.sound()),
                        x + (columns.cell() - gap) / 2,
                        getHeight() / 2.0);
            }
        }
    }
}
