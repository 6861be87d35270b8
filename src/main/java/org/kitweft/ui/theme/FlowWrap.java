package org.kitweft.ui.theme;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;

/**
 * Lays components in rows from the left, as many as fit, and asks for the height that takes: the
 * JDK's flow layout asks for one row only. One for each container.
 */
public final class FlowWrap implements LayoutManager {
    private static final int UNKNOWN_WIDTH = 1280;
    private final int gap;
    private int lastWidth;

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
        int height = walk(parent, parent.getWidth(), true);
        boolean otherWidth = parent.getWidth() != lastWidth;
        lastWidth = parent.getWidth();
        if (otherWidth && height != parent.getHeight() && parent instanceof JComponent component) {
            // Later: what is asked for while everything is being laid out is forgotten. Once for
            // each width: a parent that gives another height anyway is not asked for ever.
            EventQueue.invokeLater(component::revalidate);
        }
    }

    private int walk(Container parent, int outer, boolean place) {
        Insets insets = parent.getInsets();
        int width = outer - insets.left - insets.right;
        int y = insets.top;
        List<Component> row = new ArrayList<>();
        int x = 0;
        for (Component component : parent.getComponents()) {
            int wide = component.getPreferredSize().width;
            if (x > 0 && x + wide > width) {
                y += layRow(row, insets.left, y, place) + gap;
                row.clear();
                x = 0;
            }
            row.add(component);
            x += wide + gap;
        }
        return y + layRow(row, insets.left, y, place) + insets.bottom;
    }

    /** One row, its components on one middle line; returns its height. */
    private int layRow(List<Component> row, int left, int y, boolean place) {
        int height = row.stream().mapToInt(c -> c.getPreferredSize().height).max().orElse(0);
        int x = left;
        for (Component component : row) {
            Dimension size = component.getPreferredSize();
            if (place) {
                component.setBounds(x, y + (height - size.height) / 2, size.width, size.height);
            }
            x += size.width + gap;
        }
        return height;
    }
}
