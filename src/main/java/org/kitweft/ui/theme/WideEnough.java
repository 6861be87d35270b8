package org.kitweft.ui.theme;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/**
 * A panel in a scroll pane that fits itself into the view, but never becomes narrower or lower than
 * its layout's minimum: then it scrolls.
 */
public final class WideEnough extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1;
    private static final int STEP = 24;

    /** A panel with a layout. */
    public WideEnough(LayoutManager layout) {
        super(layout);
    }

    @Override
    public Dimension getPreferredSize() {
        return getMinimumSize();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(STEP);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= getMinimumSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() >= getMinimumSize().height;
    }
}
