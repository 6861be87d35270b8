package org.kitweft.score.engrave;

/** A bar that does not fit the width of a system, however close its notes stand. */
public final class TooDenseException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final double needed;

    /** Bar {@code number} needs more than there is, both in staff spaces. */
    TooDenseException(int number, double needed, double width) {
        super(
                "bar %d is too dense for the page: it needs a width of %d staff spaces, there are %d;"
                                .formatted(number, (int) Math.ceil(needed), (int) width)
                        + " take fewer steps per beat, a shorter meter or a wider page");
        this.needed = needed;
    }

    /** The width that would be enough, in staff spaces. */
    public double needed() {
        return needed;
    }
}
