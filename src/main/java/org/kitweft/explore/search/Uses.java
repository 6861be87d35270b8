package org.kitweft.explore.search;

import java.util.List;
import java.util.Optional;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;

/** Which additions of its plan a choice makes use of. */
final class Uses {
    private Uses() {}

    /** One bit for each addition, in their order; layers are in use without any stroke. */
    static long of(Choice choice, List<Addition> additions, Plan plan) {
        Optional<Letter> letter = choice.letter();
        if (letter.isEmpty()) {
            return 0;
        }
        long uses = 0;
        for (int i = 0; i < additions.size(); i++) {
            if (uses(letter.get(), choice, additions.get(i), plan)) {
                uses |= 1L << i;
            }
        }
        return uses;
    }

    private static boolean uses(Letter letter, Choice choice, Addition addition, Plan plan) {
        if (addition instanceof Addition.HandedOver handed) {
            return plays(letter, handed.letter(), plan);
        }
        if (addition instanceof Addition.Doubled doubled) {
            return plays(letter, doubled.letter(), plan)
                    && (!doubled.accentsOnly() || choice.dynamic() == Dynamic.ACCENT);
        }
        if (addition instanceof Addition.Tacet tacet) {
            return plays(letter, tacet.letter(), plan);
        }
        if (addition instanceof Addition.Unison) {
            return choice.isUnison();
        }
        return addition instanceof Addition.BothHands && letter == Letter.B;
    }

    private static boolean plays(Letter letter, Letter voiced, Plan plan) {
        return letter == voiced
                || (letter == Letter.B
                        && voiced.isOneHand()
                        && plan.both() != Plan.Both.OWN_SOUNDS);
    }
}
