package org.kitweft.sound.bank.soundfont;

import java.util.List;

/**
 * Samples spread over keys and velocities.
 *
 * @param name at most 20 ASCII letters
 * @param zones at least one
 */
public record Instrument(String name, List<Zone> zones) {
    public Instrument {
        zones = List.copyOf(zones);
        if (zones.isEmpty()) {
            throw new IllegalArgumentException("instrument " + name + " has no zone");
        }
    }
}
