package org.kitweft.ui.groove;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.theme.Inks;

/** Paints a grid with its headers into an image, in the theme of now. */
final class GridPicture {
    private static final int MARGIN = 12;
    private static final int SCALE = 2;

    /** Wider pictures are of no use, and would not fit into memory. */
    private static final int WIDEST = 16_000;

    private final GridModel model;

    GridPicture(GridModel model) {
        this.model = model;
    }

    BufferedImage paint() {
        GridSize size = new GridSize();
        size.fit(model, UIScale.scale(36) * model.columnsPerBar(), 0);
        GridView view = new GridView(model, size, new GridCursor(), new Playhead());
        GridHeaders.Rows rows = new GridHeaders.Rows(model, size);
        GridHeaders.Columns columns = new GridHeaders.Columns(model, size);
        Dimension names = sized(rows);
        Dimension counts = sized(columns);
        Dimension cells = sized(view);
        int width = Math.min(WIDEST / SCALE, names.width + cells.width + 2 * MARGIN);
        int height = counts.height + cells.height + 2 * MARGIN;
        BufferedImage image =
                new BufferedImage(SCALE * width, SCALE * height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(SCALE, SCALE);
            g.setColor(Inks.CANVAS.color());
            g.fillRect(0, 0, width, height);
            paint(g, columns, MARGIN + names.width, MARGIN);
            paint(g, rows, MARGIN, MARGIN + counts.height);
            paint(g, view, MARGIN + names.width, MARGIN + counts.height);
        } finally {
            g.dispose();
        }
        return image;
    }

    private static Dimension sized(JComponent component) {
        Dimension size = component.getPreferredSize();
        component.setSize(size);
        return size;
    }

    private static void paint(Graphics2D graphics, JComponent component, int x, int y) {
        Graphics2D g =
                (Graphics2D) graphics.create(x, y, component.getWidth(), component.getHeight());
        try {
            component.paint(g);
        } finally {
            g.dispose();
        }
    }
}
