package org.kitweft.score.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is said over a bar besides its notes.
 *
 * @param swing how pairs are played from its start on, where that changes
 * @param chords of the band, in order, the one that goes on from the bar before included; empty
 *     without a band
 */
public record BarMarks(Optional<SwingMark> swing, List<ChordMark> chords) {
    public BarMarks {
        Objects.requireNonNull(swing, "swing");
        chords = List.copyOf(chords);
    }
}
