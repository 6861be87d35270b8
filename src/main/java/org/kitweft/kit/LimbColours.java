package org.kitweft.kit;

/**
 * A colour for each limb, told apart by people with any kind of colour vision; its letter always
 * stands beside it. From the set of M. Okabe and K. Ito, <i>Color Universal Design</i> (2008),
 * values from memory; of its eight, four on which black letters read well.
 */
public final class LimbColours {
    private static final int ORANGE = 0xE69F00;
    private static final int SKY_BLUE = 0x56B4E9;
    private static final int BLUISH_GREEN = 0x009E73;
    private static final int REDDISH_PURPLE = 0xCC79A7;

    private LimbColours() {}

    /** The colour of a limb as {@code 0xRRGGBB}. */
    public static int rgb(Limb limb) {
        return switch (limb) {
            case RIGHT_HAND -> ORANGE;
            case LEFT_HAND -> SKY_BLUE;
            case RIGHT_FOOT -> BLUISH_GREEN;
            case LEFT_FOOT -> REDDISH_PURPLE;
        };
    }
}
