package org.kitweft.ui.theme;

import java.awt.Color;
import java.util.function.Supplier;
import javax.swing.JTextArea;

/** A text that looks like a label and goes on in the next line where it is too long. */
public final class WrappedText extends JTextArea {
    private static final long serialVersionUID = 1;

    private final transient Supplier<Color> ink;

    /**
     * A text.
     *
     * @param percent of the size of labels
     * @param ink asked for again with each theme
     */
    public WrappedText(String text, int percent, Supplier<Color> ink) {
        super(text);
        this.ink = ink;
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(null);
        setForeground(ink.get());
        Paints.type(this, percent, false);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(null);
        setOpaque(false);
        if (ink != null) {
            setForeground(ink.get());
        }
    }
}
