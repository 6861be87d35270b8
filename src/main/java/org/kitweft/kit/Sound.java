package org.kitweft.kit;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One way of striking a surface.
 *
 * @param id kebab-case, unique on its surface, e.g. {@code open}
 * @param channel MIDI channel, 1 to 16 as musicians count
 * @param program MIDI program, 0 to 127 as sent on the wire, for pitched sounds; empty for the
 *     percussion channel
 * @param key MIDI key, 0 to 127
 * @param place where its note stands
 * @param notehead the shape of its note
 * @param limbs the limbs that can strike it, a part of those that reach the surface
 * @param stops ids of sounds of the same surface that it silences: a closed hi-hat stops the open
 *     one. Two sounds of which one stops the other cannot sound together.
 */
public record Sound(
        String id,
        int channel,
        OptionalInt program,
        int key,
        StaffPlace place,
        Notehead notehead,
        Set<Limb> limbs,
        Set<String> stops) {

    public Sound {
        Ids.check("sound", id);
        Ids.checkRange("channel", channel, 1, 16);
        program.ifPresent(p -> Ids.checkRange("program", p, 0, 127));
        Ids.checkRange("key", key, 0, 127);
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(notehead, "notehead");
        if (limbs.isEmpty()) {
            throw new IllegalArgumentException(
                    "sound \"%s\" can be struck by no limb".formatted(id));
        }
        limbs = Collections.unmodifiableSet(EnumSet.copyOf(limbs));
        stops = Set.copyOf(stops);
    }

    /** Whether the sound has a pitch of its own, to be written with its key's name. */
    public boolean isPitched() {
        return program.isPresent() && channel != PERCUSSION_CHANNEL;
    }

    /** The channel that General MIDI keeps for percussion, as musicians count. */
    public static final int PERCUSSION_CHANNEL = 10;
}
