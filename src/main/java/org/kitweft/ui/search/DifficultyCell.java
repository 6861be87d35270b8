package org.kitweft.ui.search;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Locale;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/** A difficulty as a number and a bar, which is full for the hardest of the table. */
final class DifficultyCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1;
    private static final int NUMBER_WIDTH = 46;
    private static final int BAR_HEIGHT = 8;
    private static final int GAP = 6;
    private static final int TRACK_ALPHA = 80;

    private final transient FindingRows rows;
    private double part;
    private boolean chosen;

    DifficultyCell(FindingRows rows) {
        this.rows = rows;
        setHorizontalAlignment(SwingConstants.LEADING);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focus, int row, int column) {
        super.getTableCellRendererComponent(table, value, selected, focus, row, column);
        if (value instanceof Long thousandths) {
            setText(text(thousandths));
            chosen = selected;
            part = rows.hardest() == 0 ? 0 : (double) thousandths / rows.hardest();
        }
        return this;
    }

    private static Color see(Color color, int alpha) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    /** Whole points: a point is a millisecond, no ear and no hand tells parts of it. */
    static String text(long thousandths) {
        return String.format(Locale.ROOT, "%.0f", thousandths / 1000.0);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = Paints.smooth(graphics);
        try {
            int left = UIScale.scale(NUMBER_WIDTH);
            int height = UIScale.scale(BAR_HEIGHT);
            double width = getWidth() - left - UIScale.scale(GAP);
            double y = (getHeight() - height) / 2.0;
            g.setColor(chosen ? see(getForeground(), TRACK_ALPHA) : Inks.THREAD.color());
            g.fill(new RoundRectangle2D.Double(left, y, width, height, height, height));
            g.setColor(chosen ? getForeground() : Inks.FOCUS.color());
            g.fill(new RoundRectangle2D.Double(left, y, width * part, height, height, height));
        } finally {
            g.dispose();
        }
    }
}
