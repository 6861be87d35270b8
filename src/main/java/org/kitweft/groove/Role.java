package org.kitweft.groove;

import java.util.Locale;

/** What a groove is for. */
public enum Role {
    /** It keeps the pulse. */
    TIME,
    /** It leads to the next phrase. */
    FILL,
    /** It marks accents with the band. */
    PUNCH;

    /** The name in commands and files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
