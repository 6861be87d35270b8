package org.kitweft.score.model;

/** What one beam does at one chord; named as the MusicXML 4.0 type {@code beam-value}. */
public enum Beam {
    /** It starts here. */
    BEGIN,
    /** It goes on. */
    CONTINUE,
    /** It ends here. */
    END,
    /** A stub to the right. */
    FORWARD_HOOK,
    /** A stub to the left. */
    BACKWARD_HOOK
}
