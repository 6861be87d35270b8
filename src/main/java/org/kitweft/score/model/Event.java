package org.kitweft.score.model;

import org.kitweft.groove.Ticks;

/** A chord or a rest in a voice. */
public sealed interface Event permits Chord, Rest {
    /** Where it starts, in ticks from the start of its bar. */
    long tick();

    /** How long it lasts, in ticks. */
    long ticks();

    /** Its written value. */
    NoteValue value();

    /** Its dots, 0 to 2. */
    int dots();

    /** Where it ends, in ticks from the start of its bar. */
    default long end() {
        return tick() + ticks();
    }

    /** Its length for people, in quarters: {@code 1/4}. */
    default String quarters() {
        return Ticks.text(ticks());
    }
}
