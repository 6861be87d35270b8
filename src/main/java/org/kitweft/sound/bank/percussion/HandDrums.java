package org.kitweft.sound.bank.percussion;

import java.util.List;
import org.kitweft.sound.bank.voice.Drum;
import org.kitweft.sound.bank.voice.Voice;

/** Bongos, congas, timbales, surdos. Tunings by common practice, no source. */
final class HandDrums {
    private static final int SURDO = 6;

    private HandDrums() {}

    static List<PercussionSound> all() {
        return List.of(
                PercussionSound.of(60, "Hi Bongo", bongo(415, 0.28)).level(-1).pan(-120),
                PercussionSound.of(61, "Low Bongo", bongo(297, 0.34)).level(-1).pan(-60),
                PercussionSound.of(62, "Mute Hi Conga", slap(233)).level(-1).pan(60),
                PercussionSound.of(63, "Open Hi Conga", Congas.open(233, 0.55)).pan(60),
                PercussionSound.of(64, "Low Conga", Congas.open(175, 0.65)).pan(140),
                PercussionSound.of(65, "High Timbale", timbale(370, 0.7)).pan(-220),
                PercussionSound.of(66, "Low Timbale", timbale(262, 0.85)).pan(-160),
                PercussionSound.of(86, "Mute Surdo", surdo(0.2)).level(1).exclusive(SURDO),
                PercussionSound.of(87, "Open Surdo", surdo(1.1)).level(1).exclusive(SURDO));
    }

    private static Voice bongo(double hertz, double ring) {
        return Drum.tuned(hertz, ring * 1.5)
                .struck(0.62, 1.1, 0.3)
                .ringing(ring, 0.35)
                .thumping(0.85)
                .gliding(0.5, 0.015)
                .body(hertz * 0.62, 0.2, 0.06)
                .tapped(hertz * 9, 0.8, 0.8, 0.012)
                .tapped(hertz * 3, 0.8, 0.3, 0.02);
    }

    /** Fingers stay on the head: all modes choked, the slap's noise is left. */
    private static Voice slap(double hertz) {
        return Drum.tuned(hertz, 0.25)
                .struck(0.75, 0.7, 0.3)
                .ringing(0.1, 0.12)
                .thumping(0.5)
                .tilted(0.6)
                .gliding(0.8, 0.01)
                .tapped(2600, 0.9, 0.9, 0.018)
                .tapped(1250, 1.2, 0.9, 0.03);
    }

    /** Single thin head on an open metal shell, struck with a stick near the rim. */
    private static Voice timbale(double hertz, double ring) {
        return Drum.tuned(hertz, ring * 1.2)
                .struck(0.5, 0.7, 0.3)
                .ringing(ring, 0.16)
                .thumping(0.6)
                .tilted(0.45)
                .gliding(0.6, 0.02)
                .body(hertz * 5.3, 0.3, 0.35)
                .body(hertz * 7.9, 0.25, 0.25)
                .body(hertz * 11.7, 0.2, 0.18)
                .tapped(5200, 0.8, 0.6, 0.01);
    }

    private static Voice surdo(double ring) {
        return Drum.tuned(62, Math.max(0.4, ring * 1.1))
                .struck(0.22, 5, 0.4)
                .ringing(ring, ring > 0.5 ? 0.6 : 0.9)
                .gliding(1.2, 0.05)
                .secondHead(68, 20)
                .tapped(420, 0.8, ring > 0.5 ? 0.25 : 0.5, 0.05);
    }
}
