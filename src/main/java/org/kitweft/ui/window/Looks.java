package org.kitweft.ui.window;

import com.formdev.flatlaf.FlatLaf;
import org.kitweft.ui.theme.Theme;

/** Theme and zoom of the open window. For the event thread. */
final class Looks {
    private static final int STEP = 10;

    private Theme theme;
    private int zoom;
    private Runnable changed = () -> {};

    Looks(Theme theme, int zoom) {
        this.theme = theme;
        this.zoom = zoom;
    }

    /** Is called after each change, when all components have their new looks. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    Theme theme() {
        return theme;
    }

    /** Size of everything in percent. */
    int zoom() {
        return zoom;
    }

    void use(Theme other) {
        theme = other;
        apply();
    }

    void larger() {
        zoomTo(zoom + STEP);
    }

    void smaller() {
        zoomTo(zoom - STEP);
    }

    void zoomTo(int percent) {
        zoom = Math.max(Theme.SMALLEST, Math.min(Theme.LARGEST, percent));
        apply();
    }

    private void apply() {
        theme.install(zoom);
        FlatLaf.updateUI();
        changed.run();
    }
}
