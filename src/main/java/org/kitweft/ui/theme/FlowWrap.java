package org.kitweft.ui.theme;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JComponent;

/**
 * Lays components in rows from the left, as many as fit, and asks for the height that takes: the
 * JDK's flow layout asks for one row only.
 */
public final class FlowWrap implements LayoutManager {
    private static final int UNKNOWN_WIDTH = 400;
    private final int gap;

    /**
     * @param gap pixels between components
     */
    public FlowWrap(int gap) {
        this.gap = gap;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // nothing to remember
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // nothing to forget
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int width = parent.getWidth() > 0 ? parent.getWidth() : UNKNOWN_WIDTH;
        return new Dimension(width, walk(parent, width, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        int before = parent.getHeight();
        int height = walk(parent, parent.getWidth(), true);
        if (height != before && parent instanceof JComponent component) {
            component.revalidate();
        }
    }

    private int walk(Container parent, int width, boolean place) {
        int x = 0;
        int y = 0;
        int rowHeight = 0;
        for (Component component : parent.getComponents()) {
            Dimension size = component.getPreferredSize();
            if (x > 0 && x + size.width > width) {
                x = 0;
                y += rowHeight + gap;
                rowHeight = 0;
            }
            if (place) {
                component.setBounds(x, y, size.width, size.height);
            }
            x += size.width + gap;
            rowHeight = Math.max(rowHeight, size.height);
        }
        return y + rowHeight;
    }
}
