package org.kitweft.score.model;

import java.util.Objects;
import java.util.Optional;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.StaffPlace;

/**
 * One notehead.
 *
 * @param place where it stands
 * @param notehead its shape
 * @param ghost whether it stands in parentheses
 * @param accidental what is written before it
 * @param hit what it stands for
 */
public record Head(
        StaffPlace place,
        Notehead notehead,
        boolean ghost,
        Optional<Accidental> accidental,
        Hit hit) {
    public Head {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(notehead, "notehead");
        Objects.requireNonNull(accidental, "accidental");
        Objects.requireNonNull(hit, "hit");
    }
}
