package org.kitweft.ui.theme;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/**
 * A panel in a scroll pane that is as wide as the view and as high, but never lower than it can be
 * used: then it scrolls. So large type on a small screen leaves every part its room.
 */
public final class HighEnough extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1;
    private static final int STEP = 24;

    private final transient IntSupplier least;

    /**
     * A panel with a layout.
     *
     * @param least the least height in pixels, asked at each layout
     */
    public HighEnough(LayoutManager layout, IntSupplier least) {
        super(layout);
        this.least = least;
    }

    /**
     * Scrolls so that a part is in sight with all that scrolls together with it: no more than that
     * is moved, least of all what the part itself shows.
     */
    public void bringIntoSight(Component part) {
        Component whole = part;
        for (Component c = part; c != null && c != this; c = c.getParent()) {
            if (c instanceof JScrollPane) {
                whole = c;
            }
        }
        if (whole.getParent() != null && SwingUtilities.isDescendingFrom(whole, this)) {
            scrollRectToVisible(
                    SwingUtilities.convertRectangle(whole.getParent(), whole.getBounds(), this));
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, least.getAsInt());
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
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && least.getAsInt() <= getParent().getHeight();
    }
}
