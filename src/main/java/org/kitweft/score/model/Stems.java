package org.kitweft.score.model;

/** Which way the stems of a voice go. */
public enum Stems {
    /** All up. */
    UP,
    /** All down. */
    DOWN,
    /** As the notes lie: away from the edge of the staff. */
    BY_PLACE
}
