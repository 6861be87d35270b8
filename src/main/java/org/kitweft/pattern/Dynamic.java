package org.kitweft.pattern;

/** How strong a stroke is, from soft to loud. */
public enum Dynamic {
    /** Very soft, felt rather than heard; written in parentheses. */
    GHOST,
    /** Neither soft nor loud. */
    PLAIN,
    /** Loud; written with {@code >} before the letter. */
    ACCENT
}
