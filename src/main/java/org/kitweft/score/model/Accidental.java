package org.kitweft.score.model;

/** What is written before a pitched note that differs from what its line or space said before. */
public enum Accidental {
    /** Raised. */
    SHARP,
    /** No longer raised. */
    NATURAL
}
