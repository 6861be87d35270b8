package org.kitweft.score.model;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.kitweft.kit.StaffPlace;

/** What lines and spaces of a bar say so far; there is no key signature. One for each bar. */
final class Accidentals {
    private final Map<Integer, Boolean> raised = new HashMap<>();

    /** What has to be written before the next note of the bar, if anything. */
    Optional<Accidental> before(StaffPlace place) {
        boolean was = Boolean.TRUE.equals(raised.put(place.diatonic(), place.sharp()));
        if (was == place.sharp()) {
            return Optional.empty();
        }
        return Optional.of(place.sharp() ? Accidental.SHARP : Accidental.NATURAL);
    }
}
