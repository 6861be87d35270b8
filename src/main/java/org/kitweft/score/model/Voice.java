package org.kitweft.score.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Events one after the other that fill a bar without gap.
 *
 * @param number from 1; odd ones have their stems up, even ones down
 * @param stems which way its stems go
 * @param events in time
 * @param tuplets in time, never one inside another
 */
public record Voice(int number, Stems stems, List<Event> events, List<Tuplet> tuplets) {
    public Voice {
        Objects.requireNonNull(stems, "stems");
        events = List.copyOf(events);
        tuplets = List.copyOf(tuplets);
        long tick = 0;
        for (Event event : events) {
            if (event.tick() != tick) {
                throw new IllegalArgumentException(
                        "voice %d: an event starts at tick %d, expected %d"
                                .formatted(number, event.tick(), tick));
            }
            tick = event.end();
        }
    }

    /** The tuplet an event belongs to. */
    public Optional<Tuplet> tupletOf(int index) {
        return tuplets.stream().filter(t -> t.covers(index)).findFirst();
    }

    /** Its length in ticks. */
    public long ticks() {
        return events.isEmpty() ? 0 : events.get(events.size() - 1).end();
    }
}
