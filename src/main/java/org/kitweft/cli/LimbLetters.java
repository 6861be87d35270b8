package org.kitweft.cli;

import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;

/** The letter of a limb: that of a sticking which the limb plays by nature. */
final class LimbLetters {
    private LimbLetters() {}

    static Letter of(Limb limb, Kit kit) {
        return switch (limb) {
            case RIGHT_HAND -> Letter.R;
            case LEFT_HAND -> Letter.L;
            case RIGHT_FOOT, LEFT_FOOT ->
                    limb == Voicing.limbOf(Letter.K, kit) ? Letter.K : Letter.H;
        };
    }
}
