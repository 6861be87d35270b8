package org.kitweft.groove;

import java.util.Objects;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;

/**
 * Another limb that strikes together with a letter.
 *
 * @param limb who strikes with it
 * @param sound what is struck
 * @param accentsOnly whether it joins the letter's accents only
 */
public record Doubling(Limb limb, SoundName sound, boolean accentsOnly) {
    public Doubling {
        Objects.requireNonNull(limb, "limb");
        Objects.requireNonNull(sound, "sound");
    }
}
