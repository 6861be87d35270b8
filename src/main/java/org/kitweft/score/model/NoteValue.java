package org.kitweft.score.model;

import org.apache.commons.numbers.fraction.Fraction;

/** The shape of a note or rest, from long to short. */
public enum NoteValue {
    /** A whole note: four quarters. */
    WHOLE,
    /** A half note. */
    HALF,
    /** A quarter note. */
    QUARTER,
    /** An eighth note: one flag. */
    EIGHTH,
    /** A sixteenth note. */
    SIXTEENTH,
    /** A thirty-second note. */
    THIRTY_SECOND,
    /** A sixty-fourth note. */
    SIXTY_FOURTH,
    /** A 128th note. */
    N128,
    /** A 256th note. */
    N256;

    /** Flags or beams, 0 for a quarter and longer. */
    public int flags() {
        return Math.max(0, ordinal() - QUARTER.ordinal());
    }

    /** Its length in quarter notes, so many dots added. */
    public Fraction quarters(int dots) {
        Fraction plain =
                ordinal() <= QUARTER.ordinal()
                        ? Fraction.of(1 << (QUARTER.ordinal() - ordinal()))
                        : Fraction.of(1, 1 << flags());
        return plain.multiply(Fraction.of((2 << dots) - 1, 1 << dots));
    }

    /**
     * The value that is {@code 2^steps} times as short.
     *
     * @throws IllegalArgumentException if it would be shorter than a 256th or longer than a whole
     */
    public NoteValue shorter(int steps) {
        int at = ordinal() + steps;
        if (at < 0 || at >= values().length) {
            throw new IllegalArgumentException(
                    "no note value lies %d steps below %s".formatted(steps, this));
        }
        return values()[at];
    }
}
