package org.kitweft.sound;

/**
 * A named place in a timeline: where the count-in, a loop or a section starts.
 *
 * @param tick where it stands
 * @param text what stands there
 */
public record Marker(long tick, String text) {
    public Marker {
        if (text.isBlank()) {
            throw new IllegalArgumentException("the marker at tick %d is empty".formatted(tick));
        }
    }
}
