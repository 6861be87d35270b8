package org.kitweft.ui.theme;

import java.awt.Color;
import org.kitweft.kit.Limb;

/**
 * A colour for each limb from Okabe and Ito's set, which people with any kind of colour vision can
 * tell apart; a letter stands beside it always. Source: Okabe M, Ito K, "Color Universal Design",
 * 2008, jfly.uni-koeln.de/color; values from memory.
 *
 * <p>Of the eight, these four are the ones on which black letters have a contrast of at least 6:1.
 */
public final class LimbColors {
    private static final Color ORANGE = new Color(0xE69F00);
    private static final Color SKY_BLUE = new Color(0x56B4E9);
    private static final Color BLUISH_GREEN = new Color(0x009E73);
    private static final Color REDDISH_PURPLE = new Color(0xCC79A7);

    /** The colour of letters and signs on a limb's colour. */
    public static final Color INK = new Color(0x111111);

    private LimbColors() {}

    /** The colour of a limb. */
    public static Color of(Limb limb) {
        return switch (limb) {
            case RIGHT_HAND -> ORANGE;
            case LEFT_HAND -> SKY_BLUE;
            case RIGHT_FOOT -> BLUISH_GREEN;
            case LEFT_FOOT -> REDDISH_PURPLE;
        };
    }
}
