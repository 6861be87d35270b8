package org.kitweft.groove;

import java.util.Objects;

/**
 * A part of a phrase: a groove and what it is for. It lasts as long as its groove.
 *
 * @param role what it is for
 * @param groove what is played
 */
public record Section(Role role, Groove groove) {
    public Section {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(groove, "groove");
    }
}
