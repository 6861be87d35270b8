package org.kitweft.ui.search;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JTextArea;

/** Keeps a text area as high as its words take at its width, from a least to a most of lines. */
final class WrappedLines {
    private final JTextArea area;
    private final int least;
    private final int most;

    WrappedLines(JTextArea area, int least, int most) {
        this.area = area;
        this.least = least;
        this.most = most;
        area.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        fit();
                    }
                });
    }

    /** To be called when the words have changed. */
    void fit() {
        int before = area.getRows();
        area.setRows(0);
        int wrapped =
                area.getPreferredSize().height / area.getFontMetrics(area.getFont()).getHeight();
        int rows = Math.max(least, Math.min(most, wrapped));
        area.setRows(rows);
        if (rows != before) {
            area.revalidate();
        }
    }
}
