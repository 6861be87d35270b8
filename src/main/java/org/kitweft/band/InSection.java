package org.kitweft.band;

import java.util.Locale;
import java.util.Optional;

/** What a line does in a section that is not time. */
enum InSection {
    /** Goes on with its figure. */
    FIGURE,
    /** Strikes once at the start and holds. */
    HOLD,
    /** Is silent. */
    REST,
    /** Strikes with the drummer's punches. */
    PUNCHES;

    static Optional<InSection> of(String id) {
        for (InSection one : values()) {
            if (one.name().toLowerCase(Locale.ROOT).equals(id)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
