package org.kitweft.sound.bank.soundfont;

/**
 * Keys or velocities from low to high, both included.
 *
 * @param low 0 to 127
 * @param high {@code low} to 127
 */
public record Span(int low, int high) {
    /** All of them. */
    public static final Span ALL = new Span(0, 127);

    public Span {
        if (low < 0 || high > 127 || low > high) {
            throw new IllegalArgumentException(
                    "a span lies in 0 to 127, low first, not %d to %d".formatted(low, high));
        }
    }

    /** Just one. */
    public static Span only(int value) {
        return new Span(value, value);
    }

    /** Whether {@code value} lies inside. */
    public boolean holds(int value) {
        return low <= value && value <= high;
    }
}
