package org.kitweft.ui.theme;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** What all painted panels do alike. */
public final class Paints {
    private Paints() {}

    /** A copy of the graphics that paints smoothly; the caller disposes it. */
    public static Graphics2D smooth(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(
                RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        return g;
    }

    /** The window's font in another size, relative to that of labels. */
    public static Font font(double factor, boolean bold) {
        Font base = UIManager.getFont("Label.font");
        return base.deriveFont(bold ? Font.BOLD : Font.PLAIN, (float) (base.getSize2D() * factor));
    }

    /**
     * Gives a component the window's font in another size, so that it follows theme and zoom.
     *
     * @param percent of the size of labels
     */
    public static void type(JComponent component, int percent, boolean bold) {
        component.setFont(font(percent / 100.0, bold));
        // A change of theme or zoom gives the component a new UI; its font is derived anew then.
        component.addPropertyChangeListener(
                "UI", change -> component.setFont(font(percent / 100.0, bold)));
    }

    /** Writes text with its middle at a point. */
    public static void centred(Graphics2D g, String text, double x, double y) {
        FontMetrics metrics = g.getFontMetrics();
        double left = x - metrics.getStringBounds(text, g).getWidth() / 2;
        double baseline = y + (metrics.getAscent() - metrics.getDescent()) / 2.0;
        g.drawString(text, (float) left, (float) baseline);
    }

    /** The text, shortened with an ellipsis where it is wider than the room there is. */
    public static String fitting(Graphics2D g, String text, double width) {
        FontMetrics metrics = g.getFontMetrics();
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        for (int end = text.length() - 1; end > 0; end--) {
            String cut = text.substring(0, end).stripTrailing() + "…";
            if (metrics.stringWidth(cut) <= width) {
                return cut;
            }
        }
        return "";
    }
}
