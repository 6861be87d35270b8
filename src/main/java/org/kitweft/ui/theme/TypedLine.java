package org.kitweft.ui.theme;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.text.BadLocationException;
import org.kitweft.pattern.TextFormatException;

/**
 * The line under a field with text that is read: what is to be said about it, or a caret under the
 * place of the fault with what was expected there.
 */
public final class TypedLine extends JComponent {
    private static final long serialVersionUID = 1;

    private final JTextField field;
    private final transient Supplier<Optional<TextFormatException>> fault;
    private final transient Supplier<String> otherwise;

    /**
     * A line to stand right under a field.
     *
     * @param fault what is wrong with the text, if anything
     * @param otherwise what is said where nothing is
     */
    public TypedLine(
            JTextField field,
            Supplier<Optional<TextFormatException>> fault,
            Supplier<String> otherwise) {
        this.field = field;
        this.fault = fault;
        this.otherwise = otherwise;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                10, getFontMetrics(Paints.font(0.92, false)).getHeight() + UIScale.scale(5));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            g.setFont(Paints.font(0.92, false));
            Optional<TextFormatException> now = fault.get();
            if (now.isPresent()) {
                paintFault(g, now.get());
            } else {
                g.setColor(Inks.QUIET.color());
                g.drawString(
                        Paints.fitting(g, otherwise.get(), getWidth()),
                        UIScale.scale(8),
                        baseline(g));
            }
        } finally {
            g.dispose();
        }
    }

    /** The caret shows the place: the message need not name it again. */
    private static String atTheCaret(TextFormatException found) {
        String message = found.getMessage();
        String rest = message.substring(message.indexOf(": ") + 2);
        return Character.toUpperCase(rest.charAt(0)) + rest.substring(1);
    }

    private int baseline(Graphics2D g) {
        return (getHeight() + g.getFontMetrics().getAscent() - g.getFontMetrics().getDescent()) / 2;
    }

    private void paintFault(Graphics2D g, TextFormatException found) {
        double x = UIScale.scale(8);
        try {
            int index = Math.min(found.index(), field.getDocument().getLength());
            Rectangle2D at = field.modelToView2D(index);
            x = at == null ? x : at.getX();
        } catch (BadLocationException e) {
            // The field has moved on since; the next repaint is right.
            x = UIScale.scale(8);
        }
        x = Math.max(UIScale.scale(6), Math.min(getWidth() - UIScale.scale(8), x));
        g.setColor(Inks.FAULT.color());
        double arm = UIScale.scale(5);
        Path2D caret = new Path2D.Double();
        caret.moveTo(x, 1);
        caret.lineTo(x + arm, 1 + arm * 1.2);
        caret.lineTo(x - arm, 1 + arm * 1.2);
        caret.closePath();
        g.fill(caret);
        String text = atTheCaret(found);
        double width = g.getFontMetrics().stringWidth(text);
        double left = x + arm * 2;
        if (left + width > getWidth()) {
            left = Math.max(UIScale.scale(6), x - arm * 2 - width);
        }
        g.drawString(Paints.fitting(g, text, getWidth() - left), (float) left, baseline(g));
    }
}
