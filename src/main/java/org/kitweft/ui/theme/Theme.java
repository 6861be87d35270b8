package org.kitweft.ui.theme;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.util.Locale;
import javax.swing.UIManager;

/** The looks of the window: light, dark, or as the desktop has it; and its size of type. */
public enum Theme {
    /** As the desktop has it, where it tells; else light. */
    DESKTOP,
    /** Dark on light. */
    LIGHT,
    /** Light on dark. */
    DARK;

    /** The smallest zoom in percent. */
    public static final int SMALLEST = 80;

    /** The largest zoom in percent. */
    public static final int LARGEST = 200;

    private static final float BASE_SIZE = 13f;

    /** Whether the window is dark with it. */
    public boolean isDark() {
        return this == DARK || (this == DESKTOP && desktopIsDark());
    }

    /**
     * Sets look and feel for components made from now on; {@link FlatLaf#updateUI()} reaches those
     * that exist already.
     *
     * @param zoom size of everything in percent, {@value #SMALLEST} to {@value #LARGEST}
     */
    public void install(int zoom) {
        FlatLaf.registerCustomDefaultsSource("org.kitweft.ui.theme");
        // A zoom from before would be zoomed again.
        UIManager.put("defaultFont", null);
        if (isDark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        zoom(zoom);
    }

    private static void zoom(int percent) {
        Font base = UIManager.getFont("defaultFont");
        float size = Math.max(base.getSize2D(), BASE_SIZE) * percent / 100f;
        if (Math.abs(size - base.getSize2D()) > 0.1f) {
            UIManager.put("defaultFont", base.deriveFont(size));
        }
    }

    /** Only some desktops tell the toolkit the name of their theme. */
    private static boolean desktopIsDark() {
        if (GraphicsEnvironment.isHeadless()) {
            return false;
        }
        Object name = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Net/ThemeName");
        return name instanceof String theme && theme.toLowerCase(Locale.ROOT).contains("dark");
    }
}
