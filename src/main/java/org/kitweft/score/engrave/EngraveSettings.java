package org.kitweft.score.engrave;

/**
 * What the engraver may decide on.
 *
 * @param width of a system in staff spaces
 * @param mostStretch how many times as wide as they would like notes stand at most; a system that
 *     would need more ends early
 * @param barNumbers whether systems after the first begin with the number of their bar
 */
public record EngraveSettings(double width, double mostStretch, boolean barNumbers) {
    /** Lines stretched to at most this still look like one text. Our own choice. */
    public static final double USUAL_STRETCH = 2.2;

    public EngraveSettings {
        if (!(width > 0) || !(mostStretch >= 1)) {
            throw new IllegalArgumentException(
                    "width %s, stretch %s: expected more than 0 and at least 1"
                            .formatted(width, mostStretch));
        }
    }

    /** Systems of some width. */
    public static EngraveSettings ofWidth(double width) {
        return new EngraveSettings(width, USUAL_STRETCH, true);
    }
}
