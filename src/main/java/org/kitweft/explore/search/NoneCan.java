package org.kitweft.explore.search;

import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.groove.Place;

/**
 * No sticking and voicing within the space searched produces the groove.
 *
 * @param places the steps that forbid it, in order: each by itself, or a smallest set of steps that
 *     cannot be had together, though without any one of them the rest could
 * @param reason one sentence for people, without the steps
 */
public record NoneCan(List<Place> places, String reason) implements SearchOutcome {
    public NoneCan {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException(
                    "a groove that none can play has a step that says so");
        }
    }

    /** The reason and the first few steps in one line. */
    public String line() {
        int most = 6;
        return reason
                + ": "
                + places.stream().limit(most).map(Place::toString).collect(Collectors.joining(", "))
                + (places.size() > most ? " and %d more".formatted(places.size() - most) : "");
    }
}
