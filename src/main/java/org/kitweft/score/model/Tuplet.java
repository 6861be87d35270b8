package org.kitweft.score.model;

/**
 * Events written as {@code actual} notes in the time of {@code normal} of the same value.
 *
 * @param first index of its first event in the voice
 * @param last index of its last event
 * @param actual the number over it
 * @param normal how many would fill the time without it
 * @param unit the value that is counted
 * @param bracket whether a bracket is needed: no beam joins exactly these events
 */
public record Tuplet(int first, int last, int actual, int normal, NoteValue unit, boolean bracket) {
    public Tuplet {
        if (first < 0 || last < first || actual < 2 || normal < 1) {
            throw new IllegalArgumentException(
                    "tuplet %d:%d over events %d to %d".formatted(actual, normal, first, last));
        }
    }

    /** Whether an event of the voice belongs to it. */
    public boolean covers(int index) {
        return first <= index && index <= last;
    }
}
