package org.kitweft.explore.search;

import java.util.Objects;
import org.kitweft.groove.Hit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * One sound struck at a step of a groove, as it is heard: nobody knows yet by which limb.
 *
 * @param sound what is struck
 * @param dynamic how loud
 * @param ornament what is added
 */
public record Strike(SoundName sound, Dynamic dynamic, Ornament ornament) {
    public Strike {
        Objects.requireNonNull(sound, "sound");
        Objects.requireNonNull(dynamic, "dynamic");
        Objects.requireNonNull(ornament, "ornament");
    }

    /** A plain strike without ornament. */
    public static Strike plain(SoundName sound) {
        return new Strike(sound, Dynamic.PLAIN, Ornament.NONE);
    }

    static Strike of(Hit hit) {
        return new Strike(hit.sound(), hit.dynamic(), hit.ornament());
    }

    /** What is heard of two limbs on one sound at one instant: the louder, the more ornamented. */
    Strike with(Strike other) {
        return new Strike(
                sound,
                dynamic.compareTo(other.dynamic) >= 0 ? dynamic : other.dynamic,
                ornament.compareTo(other.ornament) >= 0 ? ornament : other.ornament);
    }
}
