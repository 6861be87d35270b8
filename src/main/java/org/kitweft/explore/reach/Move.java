package org.kitweft.explore.reach;

import java.util.Locale;
import java.util.Objects;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;

/**
 * A limb's way from one stroke to its next.
 *
 * @param limb who moves
 * @param from what it struck
 * @param to what it strikes next
 * @param start when it leaves, in ticks from the start
 * @param ticks how long it has
 * @param cm how far it is, centre to centre in the horizontal plane; 0 on one surface
 * @param ceiling the highest tempo at which it is possible, in beats a minute
 */
public record Move(
        Limb limb,
        SoundName from,
        SoundName to,
        long start,
        long ticks,
        double cm,
        double ceiling) {
    public Move {
        Objects.requireNonNull(limb, "limb");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        if (ticks < 0 || !(cm >= 0) || !(ceiling >= 0)) {
            throw new IllegalArgumentException(
                    "a move of %s cm in %d ticks, up to tempo %s: expected 0 or more of each"
                            .formatted(cm, ticks, ceiling));
        }
    }

    /** One line for people: {@code right hand from snare to ride, 68 cm}. */
    public String words() {
        return from.surface().equals(to.surface())
                ? "%s again on %s".formatted(limb.words(), to.surface())
                : String.format(
                        Locale.ROOT,
                        "%s from %s to %s, %.0f cm",
                        limb.words(),
                        from.surface(),
                        to.surface(),
                        cm);
    }
}
