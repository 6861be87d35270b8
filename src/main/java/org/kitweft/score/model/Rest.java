package org.kitweft.score.model;

import java.util.Objects;

/**
 * Silence of one voice.
 *
 * @param tick where it starts, in ticks from the start of its bar
 * @param ticks how long it lasts
 * @param value its written value
 * @param dots 0 to 2
 * @param wholeBar whether it is the rest in the middle of an empty bar, whatever the meter
 */
public record Rest(long tick, long ticks, NoteValue value, int dots, boolean wholeBar)
        implements Event {
    public Rest {
        Objects.requireNonNull(value, "value");
    }
}
