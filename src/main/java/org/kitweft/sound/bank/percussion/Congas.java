package org.kitweft.sound.bank.percussion;

import org.kitweft.sound.bank.voice.Drum;

/** Open tone of conga-like drums, on the percussion channel and as a pitched program. */
public final class Congas {
    private Congas() {}

    /**
     * Fingers near the rim, let off at once. The air in the shell adds a resonance below the
     * head's.
     *
     * @param hertz mode (0,1)
     * @param ring its decay in seconds
     */
    public static Drum open(double hertz, double ring) {
        return Drum.tuned(hertz, ring * 1.35)
                .struck(0.66, 1.8 * Math.sqrt(200 / hertz), 0.4)
                .ringing(ring, 0.6)
                .thumping(1)
                .tilted(0.1)
                .gliding(0.5, 0.02)
                .body(hertz * 0.47, 0.18, 0.12)
                .tapped(hertz * 8, 0.8, 0.3, 0.01)
                .tapped(hertz * 3.2, 0.9, 0.3, 0.025);
    }
}
