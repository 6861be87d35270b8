package org.kitweft.score.model;

import java.util.Objects;
import java.util.Optional;

/**
 * A chord that the band plays, over the staff.
 *
 * @param tick from the start of its measure
 * @param chord empty: N.C., the band is silent
 */
public record ChordMark(long tick, Optional<org.kitweft.band.Chord> chord) {
    public ChordMark {
        Objects.requireNonNull(chord, "chord");
    }

    /** As printed. */
    public String text() {
        return chord.map(org.kitweft.band.Chord::text).orElse("N.C.");
    }
}
