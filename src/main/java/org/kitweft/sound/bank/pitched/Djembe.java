package org.kitweft.sound.bank.pitched;

import java.util.List;
import org.kitweft.sound.bank.voice.Drum;
import org.kitweft.sound.bank.voice.Voice;

/**
 * The three strokes of a djembe, each on its own keys: bass (palm in the middle: the air in the
 * goblet swings), tone (fingers at the rim) and slap (fingertips at the rim: the fundamental is
 * damped, high modes ring). Values by ear, no source.
 */
final class Djembe {
    /** Bass, tone and slap sound as they are on these keys. */
    static final List<Integer> ROOTS = List.of(36, 48, 60);

    private Djembe() {}

    static Voice voice(int root) {
        return switch (root) {
            case 36 -> bass();
            case 48 -> tone();
            default -> slap();
        };
    }

    private static Voice bass() {
        return Drum.tuned(168, 0.75)
                .struck(0.15, 4, 0.35)
                .ringing(0.22, 0.5)
                .gliding(0.8, 0.03)
                .body(74, 1.6, 0.6)
                .tapped(600, 0.7, 0.6, 0.03);
    }

    private static Voice tone() {
        return Drum.tuned(352, 0.6)
                .struck(0.68, 1.1, 0.3)
                .ringing(0.42, 0.4)
                .tilted(0.15)
                .gliding(0.5, 0.015)
                .body(74, 0.25, 0.2)
                .tapped(2600, 0.8, 0.35, 0.012);
    }

    private static Voice slap() {
        return Drum.tuned(352, 0.4)
                .struck(0.85, 0.45, 0.3)
                .ringing(0.26, 0.08)
                .thumping(0.25)
                .tilted(0.9)
                .gliding(0.6, 0.01)
                .tapped(4200, 0.7, 1.0, 0.018);
    }
}
