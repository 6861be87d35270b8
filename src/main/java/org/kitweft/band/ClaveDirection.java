package org.kitweft.band;

import java.util.Locale;
import java.util.Optional;

/** Which side of the clave comes first. */
public enum ClaveDirection {
    /** Three strokes, then two. */
    THREE_TWO("3-2"),
    /** Two strokes, then three. */
    TWO_THREE("2-3");

    private final String id;

    ClaveDirection(String id) {
        this.id = id;
    }

    /** The direction of a name such as {@code 2-3}. */
    public static Optional<ClaveDirection> of(String id) {
        for (ClaveDirection direction : values()) {
            if (direction.id.equals(id.toLowerCase(Locale.ROOT))) {
                return Optional.of(direction);
            }
        }
        return Optional.empty();
    }

    /** The name in commands and files. */
    public String id() {
        return id;
    }
}
