package org.kitweft.groove;

/**
 * A step of a groove, as people count.
 *
 * @param bar from 1
 * @param step from 1, within the bar
 */
public record Place(int bar, int step) implements Comparable<Place> {
    public Place {
        if (bar < 1 || step < 1) {
            throw new IllegalArgumentException(
                    "bar %d, step %d: both count from 1".formatted(bar, step));
        }
    }

    @Override
    public int compareTo(Place other) {
        return bar != other.bar
                ? Integer.compare(bar, other.bar)
                : Integer.compare(step, other.step);
    }

    @Override
    public String toString() {
        return "bar %d step %d".formatted(bar, step);
    }
}
