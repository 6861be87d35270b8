package org.kitweft.ui.practice;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import org.kitweft.groove.Feel;

/** Shows a feel by its words. */
final class FeelRenderer extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focus) {
        Object shown = value instanceof Feel feel ? feel.words() : value;
        return super.getListCellRendererComponent(list, shown, index, selected, focus);
    }
}
