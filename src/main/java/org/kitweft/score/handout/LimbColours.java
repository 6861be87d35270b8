package org.kitweft.score.handout;

import java.awt.Color;
import org.kitweft.kit.Limb;

/**
 * A colour for each limb, told apart by colour-blind people too; always shown with the limb's
 * letters. From the set of M. Okabe and K. Ito, <i>Color Universal Design</i> (2008).
 */
public final class LimbColours {
    private LimbColours() {}

    /** The colour of a limb. */
    public static Color of(Limb limb) {
        return switch (limb) {
            case RIGHT_HAND -> new Color(0xD5, 0x5E, 0x00);
            case LEFT_HAND -> new Color(0x00, 0x72, 0xB2);
            case RIGHT_FOOT -> new Color(0x00, 0x9E, 0x73);
            case LEFT_FOOT -> new Color(0xCC, 0x79, 0xA7);
        };
    }
}
