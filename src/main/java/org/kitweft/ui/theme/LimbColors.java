package org.kitweft.ui.theme;

import java.awt.Color;
import org.kitweft.kit.Limb;
import org.kitweft.kit.LimbColours;

/**
 * The colours of {@link LimbColours} as the window paints with them, and the ink of the letters
 * that always stand on them.
 */
public final class LimbColors {
    /** The colour of letters and signs on a limb's colour: a contrast of at least 6:1. */
    public static final Color INK = new Color(0x111111);

    private LimbColors() {}

    /** The colour of a limb. */
    public static Color of(Limb limb) {
        return new Color(LimbColours.rgb(limb));
    }
}
