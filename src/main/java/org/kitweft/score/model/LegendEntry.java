package org.kitweft.score.model;

import java.util.Objects;
import java.util.Optional;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.StaffPlace;

/**
 * What a notehead at a place means.
 *
 * @param sound the sound
 * @param words its name for people
 * @param place where it stands
 * @param notehead its shape
 * @param sign the sign that tells it from another sound of the same place and shape
 * @param foot whether a foot plays it, so that its stem goes down
 */
public record LegendEntry(
        SoundName sound,
        String words,
        StaffPlace place,
        Notehead notehead,
        Optional<Sign> sign,
        boolean foot) {
    public LegendEntry {
        Objects.requireNonNull(sound, "sound");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(notehead, "notehead");
        Objects.requireNonNull(sign, "sign");
    }
}
