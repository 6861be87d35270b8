package org.kitweft.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/** Refuses at input what a limb cannot strike. */
final class Reach {
    private Reach() {}

    /** Checks the limb that a letter names; for B both hands. */
    static void check(String option, Letter letter, SoundName sound, Kit kit) {
        check(option, Voicing.limbOf(letter, kit), sound, kit, "");
        if (letter == Letter.B) {
            check(option, Limb.LEFT_HAND, sound, kit, "");
        }
    }

    /**
     * Checks a limb.
     *
     * @param advice added to the message; {@code %s} in it stands for a limb that can
     */
    static void check(String option, Limb limb, SoundName sound, Kit kit, String advice) {
        if (kit.canStrike(limb, sound)) {
            return;
        }
        List<Limb> able = kit.sound(sound).limbs().stream().sorted().toList();
        throw new InputException(
                "%s: the %s cannot strike %s, only the %s can%s"
                        .formatted(
                                option,
                                limb.words(),
                                sound,
                                able.stream()
                                        .map(Limb::words)
                                        .collect(Collectors.joining(" or the ")),
                                advice.formatted(able.get(0).id())));
    }
}
