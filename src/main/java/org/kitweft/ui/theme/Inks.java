package org.kitweft.ui.theme;

import java.awt.Color;
import javax.swing.UIManager;

/**
 * The colours our own panels paint with, by name; their values stand in the theme's property files
 * beside this class. Asked for while painting, so that a change of theme works at once.
 */
public enum Inks {
    /** Behind kit and grid. */
    CANVAS("Kitweft.canvas"),
    /** Every other beat of the grid. */
    CANVAS_SHADE("Kitweft.canvasShade"),
    /** Thin lines between steps and rows. */
    THREAD("Kitweft.thread"),
    /** Beat lines, outlines. */
    LINE("Kitweft.line"),
    /** Bar lines, names. */
    TEXT("Kitweft.text"),
    /** Secondary text. */
    QUIET("Kitweft.quiet"),
    /** The skin of a drum. */
    SKIN("Kitweft.skin"),
    /** The shell of a drum. */
    SHELL("Kitweft.shell"),
    /** The metal of a cymbal. */
    METAL("Kitweft.metal"),
    /** Rings on a cymbal. */
    GROOVES("Kitweft.grooves"),
    /** The playhead, a struck surface. */
    LIGHT("Kitweft.light"),
    /** What the keyboard works on. */
    FOCUS("Kitweft.focus"),
    /** Behind what is selected. */
    CHOSEN("Kitweft.chosen"),
    /** Conflicts and errors. */
    FAULT("Kitweft.fault"),
    /** Behind a conflict. */
    FAULT_SHADE("Kitweft.faultShade"),
    /** A section of a phrase that keeps time. */
    TIME("Kitweft.time"),
    /** A section that is a fill. */
    FILL("Kitweft.fill"),
    /** A section that is a punch. */
    PUNCH("Kitweft.punch");

    private final String key;

    Inks(String key) {
        this.key = key;
    }

    /** The colour in the theme of now. */
    public Color color() {
        Color color = UIManager.getColor(key);
        if (color == null) {
            throw new IllegalStateException("the theme has no colour " + key);
        }
        return color;
    }

    /** The same, see-through; {@code alpha} from 0 (nothing) to 255. */
    public Color color(int alpha) {
        Color color = color();
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }
}
