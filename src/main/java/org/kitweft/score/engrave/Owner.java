package org.kitweft.score.engrave;

import java.util.Objects;
import java.util.Optional;
import org.kitweft.groove.Hit;

/**
 * What a sign belongs to.
 *
 * @param measure index of the measure in the score; -1: none
 * @param voice number of the voice; 0: none
 * @param tick from the start of the measure; for a beam or tuplet that of its first event
 * @param hit the hit a head stands for
 */
public record Owner(int measure, int voice, long tick, Optional<Hit> hit) {
    /** Belongs to the staff or page itself. */
    public static final Owner NONE = new Owner(-1, 0, 0, Optional.empty());

    public Owner {
        Objects.requireNonNull(hit, "hit");
    }

    /** Something of an instant in a voice. */
    static Owner of(int measure, int voice, long tick) {
        return new Owner(measure, voice, tick, Optional.empty());
    }
}
