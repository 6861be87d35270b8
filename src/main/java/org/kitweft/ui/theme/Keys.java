package org.kitweft.ui.theme;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys that work while a component has the focus. */
public final class Keys {
    private Keys() {}

    /**
     * Binds a key.
     *
     * @param key as {@link KeyStroke#getKeyStroke(String)} reads it, e.g. {@code shift ENTER}
     */
    public static void bind(JComponent component, String key, Runnable body) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        if (stroke == null) {
            throw new IllegalArgumentException("no key is called \"%s\"".formatted(key));
        }
        component.getInputMap(JComponent.WHEN_FOCUSED).put(stroke, key);
        component
                .getActionMap()
                .put(
                        key,
                        new AbstractAction() {
                            private static final long serialVersionUID = 1;

                            @Override
                            public void actionPerformed(ActionEvent event) {
                                body.run();
                            }
                        });
    }
}
