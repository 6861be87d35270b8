package org.kitweft.sound.bank.percussion;

import java.util.List;
import org.kitweft.sound.bank.voice.Body;
import org.kitweft.sound.bank.voice.Drum;
import org.kitweft.sound.bank.voice.Snare;
import org.kitweft.sound.bank.voice.Voice;

/**
 * Bass drums, snare drum and toms. Frequencies and times: by ear and common practice, no source,
 * inside the ranges of Fletcher and Rossing ch. 18.
 */
final class Drums {
    private Drums() {}

    static List<PercussionSound> all() {
        return List.of(
                PercussionSound.of(35, "Acoustic Bass Drum", feltKick()).level(1),
                PercussionSound.of(36, "Bass Drum 1", kick()).level(2),
                PercussionSound.of(37, "Side Stick", crossStick()).level(-3),
                PercussionSound.of(38, "Acoustic Snare", snare()).level(1),
                PercussionSound.of(40, "Electric Snare", rim()).level(2),
                PercussionSound.of(50, "High Tom", tom(164.8, 0.75)).pan(-180),
                PercussionSound.of(48, "Hi-Mid Tom", tom(146.8, 0.8)).pan(-100),
                PercussionSound.of(47, "Low-Mid Tom", tom(123.5, 0.9)).pan(80),
                PercussionSound.of(45, "Low Tom", tom(110.0, 1.0)).pan(140),
                PercussionSound.of(43, "High Floor Tom", floorTom(82.4, 1.15)).pan(240),
                PercussionSound.of(41, "Low Floor Tom", floorTom(73.4, 1.25)).pan(300));
    }

    /** Damped, hard beater: a click, then the pitch settles fast. */
    private static Voice kick() {
        return Drum.tuned(52, 0.55)
                .struck(0.12, 3.2, 0.35)
                .ringing(0.42, 0.22)
                .thumping(1)
                .gliding(11, 0.022)
                .secondHead(58, 30)
                .body(112, 0.35, 0.12)
                .tapped(3600, 0.9, 0.5, 0.016)
                .tapped(1500, 0.8, 0.4, 0.025)
                .tapped(320, 0.7, 0.5, 0.06);
    }

    /** Open and deep, felt beater: less click, longer ring. */
    private static Voice feltKick() {
        return Drum.tuned(43, 0.85)
                .struck(0.2, 5.5, 0.4)
                .ringing(0.75, 0.3)
                .gliding(6, 0.03)
                .secondHead(50, 26)
                .body(88, 0.4, 0.25)
                .tapped(1100, 0.8, 0.25, 0.02)
                .tapped(190, 0.7, 0.5, 0.09);
    }

    private static Drum snareDrum(double place) {
        return Drum.tuned(182, 0.5)
                .struck(place, 1.5, 0.35)
                .ringing(0.26, 0.28)
                .thumping(0.8)
                .gliding(1.6, 0.02)
                .secondHead(240, 150);
    }

    private static Voice snare() {
        Drum drum = snareDrum(0.3).tapped(4300, 0.7, 0.9, 0.014).tapped(1300, 0.8, 0.6, 0.03);
        return new Snare(drum, 0.62, 0.32);
    }

    /** Head and rim in one stroke: the hoop rings, everything is brighter. */
    private static Voice rim() {
        Drum drum =
                snareDrum(0.55)
                        .tilted(0.7)
                        .body(423, 0.7, 0.36)
                        .body(915, 1.5, 0.36)
                        .body(1620, 2.0, 0.32)
                        .body(2480, 1.8, 0.24)
                        .body(3720, 1.4, 0.17)
                        .tapped(5600, 0.6, 2.4, 0.014)
                        .tapped(2100, 0.8, 0.9, 0.02);
        return new Snare(drum, 0.55, 0.24);
    }

    /** The stick lies on the head and its shaft strikes the hoop: a short wooden knock. */
    private static Voice crossStick() {
        return Body.lasting(0.25)
                .struck(0.35, 0.3)
                .mode(345, 0.35, 0.07)
                .mode(520, 0.5, 0.06)
                .mode(1180, 1, 0.05)
                .mode(1730, 0.9, 0.045)
                .mode(2650, 0.7, 0.035)
                .mode(3900, 0.5, 0.025)
                .mode(5300, 0.3, 0.02)
                .tapped(4200, 0.7, 0.5, 0.008);
    }

    private static Voice tom(double hertz, double ring) {
        return Drum.tuned(hertz, ring * 1.25)
                .struck(0.28, 2.0, 0.35)
                .ringing(ring, 0.55)
                .thumping(0.9)
                .gliding(1.8, 0.05)
                .secondHead(hertz * 1.12, hertz * 0.32)
                .tapped(3300, 0.8, 0.35, 0.012)
                .tapped(900, 0.8, 0.4, 0.03);
    }

    private static Voice floorTom(double hertz, double ring) {
        return Drum.tuned(hertz, ring * 1.2)
                .struck(0.28, 2.4, 0.35)
                .ringing(ring, 0.5)
                .thumping(0.95)
                .gliding(2.0, 0.06)
                .secondHead(hertz * 1.1, hertz * 0.3)
                .tapped(2700, 0.8, 0.32, 0.012)
                .tapped(600, 0.8, 0.4, 0.035);
    }
}
