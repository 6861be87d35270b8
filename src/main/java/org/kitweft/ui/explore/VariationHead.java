package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.kitweft.groove.Role;
import org.kitweft.pattern.Stroke;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/** What stands over the list: the sticking, each letter over its column, and what figures mean. */
final class VariationHead extends Painted {
    private static final long serialVersionUID = 1;

    private final transient VariationList model;
    private transient Optional<Steps> steps = Optional.empty();

    VariationHead(VariationList model) {
        this.model = model;
    }

    void show(Optional<Steps> other) {
        steps = other;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                10, getFontMetrics(Paints.font(0.9, true)).getHeight() + UIScale.scale(4));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            g.setColor(Inks.CANVAS_SHADE.color());
            g.fillRect(0, 0, getWidth(), getHeight());
            steps.ifPresent(shown -> paint(g, shown));
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, Steps shown) {
        Optional<Role> role = model.order().role();
        FontMetrics metrics = getFontMetrics(Paints.font(0.9, false));
        RowColumns columns = RowColumns.of(metrics, getWidth(), shown, model);
        g.setFont(Paints.font(0.85, false));
        g.setColor(Inks.QUIET.color());
        right(g, "cm", columns.cm());
        right(g, "to bpm", columns.bpm());
        if (role.isPresent()) {
            right(g, role.get().id(), columns.score());
        }
        g.setFont(Paints.font(0.9, true));
        double gap = Math.min(UIScale.scale(2), columns.cell() / 4);
        for (int step = 0; step < columns.shown(); step++) {
            Optional<Stroke.Struck> struck = shown.struck(step);
            double x = columns.x(step);
            if (struck.isPresent()) {
                g.setColor(LimbColors.of(shown.limb(struck.get())));
                double bar = UIScale.scale(3);
                g.fill(new Rectangle2D.Double(x, getHeight() - bar, columns.cell() - gap, bar));
            }
            String text = struck.map(Stroke.Struck::text).orElse("–");
            if (g.getFontMetrics().stringWidth(text) > columns.cell()) {
                text = struck.map(s -> s.letter().name()).orElse("–");
            }
            if (g.getFontMetrics().stringWidth(text) <= columns.cell()) {
                g.setColor(Inks.TEXT.color());
                Paints.centred(
                        g,
                        text,
                        x + (columns.cell() - gap) / 2,
                        (getHeight() - UIScale.scale(3)) / 2.0);
            }
        }
    }

    private void right(Graphics2D g, String text, int edge) {
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(
                text,
                edge - metrics.stringWidth(text),
                (getHeight() + metrics.getAscent() - metrics.getDescent()) / 2);
    }
}
