package org.kitweft.ui.theme;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A component that paints itself and can be named to those who cannot see it. */
public abstract class Painted extends JComponent {
    private static final long serialVersionUID = 1;

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext =
                    new AccessibleJComponent() {
                        private static final long serialVersionUID = 1;

                        @Override
                        public AccessibleRole getAccessibleRole() {
                            return AccessibleRole.CANVAS;
                        }
                    };
        }
        return accessibleContext;
    }
}
