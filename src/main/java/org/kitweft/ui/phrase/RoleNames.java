package org.kitweft.ui.phrase;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import org.kitweft.groove.Role;

/** Roles in a list, as headings write them. */
final class RoleNames extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focus) {
        Object shown = value instanceof Role role ? PhraseModel.title(role) : value;
        return super.getListCellRendererComponent(list, shown, index, selected, focus);
    }
}
