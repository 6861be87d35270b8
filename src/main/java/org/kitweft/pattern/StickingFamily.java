package org.kitweft.pattern;

/**
 * What a sticking is made of, by its runs of one hand. Common practice, no source: the trade builds
 * its figures from single strokes and double strokes.
 */
public enum StickingFamily {
    /** The hands alternate throughout: RLRL. */
    SINGLES("singles"),
    /** Each hand strokes twice, from wherever one starts: RRLL, RLLR. */
    DOUBLES("doubles"),
    /** Single and double strokes mixed, no hand more than twice in a row: RLRR, RLRRL. */
    PARADIDDLES("paradiddles"),
    /** One hand strokes three times or more in a row. */
    LONGER_RUNS("longer-runs");

    private final String id;

    StickingFamily(String id) {
        this.id = id;
    }

    /** The name in commands and files. */
    public String id() {
        return id;
    }
}
