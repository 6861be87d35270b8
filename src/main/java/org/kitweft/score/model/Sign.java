package org.kitweft.score.model;

/** What stands over, under or on the stem of a chord. */
public enum Sign {
    /** Louder. */
    ACCENT,
    /** A small circle: the sound rings until it is stopped. */
    OPEN,
    /** A plus: the sound that had been open is stopped. */
    CLOSED,
    /** A z on the stem: multiple bounces. */
    BUZZ
}
