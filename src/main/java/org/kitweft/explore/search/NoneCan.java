package org.kitweft.explore.search;

import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.groove.Place;

/**
 * No sticking and voicing within the space searched produces the groove.
 *
 * @param obstacles what forbids it, in order of place, at least one
 */
public record NoneCan(List<Obstacle> obstacles) implements SearchOutcome {
    private static final int MOST_SHOWN = 6;

    /**
     * Steps that forbid a groove.
     *
     * @param places the steps, in order: each by itself, or a smallest set of steps that cannot be
     *     had together, though without any one of them the rest could
     * @param reason one sentence for people, without the steps
     */
    public record Obstacle(List<Place> places, String reason) {
        public Obstacle {
            places = List.copyOf(places);
            if (places.isEmpty()) {
                throw new IllegalArgumentException("an obstacle has at least one step");
            }
        }

        /** The reason and the first few steps in one line. */
        public String line() {
            return reason
                    + ": "
                    + places.stream()
                            .limit(MOST_SHOWN)
                            .map(Place::toString)
                            .collect(Collectors.joining(", "))
                    + (places.size() > MOST_SHOWN
                            ? " and %d more".formatted(places.size() - MOST_SHOWN)
                            : "");
        }
    }

    public NoneCan {
        obstacles = List.copyOf(obstacles);
        if (obstacles.isEmpty()) {
            throw new IllegalArgumentException("a groove that none can play has an obstacle");
        }
    }

    /** All steps that forbid it, in order. */
    public List<Place> places() {
        return obstacles.stream().flatMap(o -> o.places().stream()).distinct().sorted().toList();
    }

    /** The first obstacle in one line, and how many there are beside it. */
    public String line() {
        return obstacles.get(0).line()
                + (obstacles.size() > 1 ? "; and %d more".formatted(obstacles.size() - 1) : "");
    }
}
