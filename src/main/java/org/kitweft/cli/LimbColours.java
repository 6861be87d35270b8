package org.kitweft.cli;

import java.awt.Color;
import org.kitweft.kit.Limb;

/**
 * A colour for each limb, told apart by colour-blind people too. Source: M. Okabe and K. Ito, Color
 * Universal Design (2002, revised 2008); values from memory. A letter always stands beside it.
 */
final class LimbColours {
    private LimbColours() {}

    static Color of(Limb limb) {
        return switch (limb) {
            case RIGHT_HAND -> new Color(0x00, 0x72, 0xB2); // blue
            case LEFT_HAND -> new Color(0xD5, 0x5E, 0x00); // vermillion
            case RIGHT_FOOT -> new Color(0x00, 0x9E, 0x73); // bluish green
            case LEFT_FOOT -> new Color(0xCC, 0x79, 0xA7); // reddish purple
        };
    }
}
