package org.kitweft.band;

import java.util.Optional;

/**
 * A moment at which a player does something: strikes, or stops.
 *
 * @param written where it is written, in ticks from the start of the phrase
 * @param start where it sounds
 * @param step what to strike; a rest stops what sounds
 * @param chord the chord it belongs to; empty where there is none
 * @param chordEnd written tick where that chord ends
 * @param stepTicks how long a step of the figure lasts
 */
record Cue(
        long written,
        long start,
        FigureStep step,
        Optional<Chord> chord,
        long chordEnd,
        long stepTicks) {

    /** Whether something is struck. */
    boolean sounds() {
        return step.isNote() && chord.isPresent();
    }
}
