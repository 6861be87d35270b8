package org.kitweft.pattern;

/** What is added to a stroke. */
public enum Ornament {
    /** Nothing: a single stroke. */
    NONE(0),
    /** One grace note by the other hand just before. */
    FLAM(1),
    /** Two grace notes by the other hand just before. */
    DRAG(2),
    /** Multiple bounces of one stroke; written with {@code z} after the letter. */
    BUZZ(0);

    private final int graceNotes;

    Ornament(int graceNotes) {
        this.graceNotes = graceNotes;
    }

    /** Grace notes before the stroke, 0 to 2. */
    public int graceNotes() {
        return graceNotes;
    }
}
