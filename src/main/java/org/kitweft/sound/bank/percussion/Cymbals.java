package org.kitweft.sound.bank.percussion;

import java.util.List;
import org.kitweft.sound.bank.physics.Plate;
import org.kitweft.sound.bank.voice.Cymbal;
import org.kitweft.sound.bank.voice.Voice;

/**
 * Hi-hat, rides, crashes, splash and china. Values by ear, no source, where {@link Cymbal} names
 * none.
 */
final class Cymbals {
    private static final int HI_HAT = 1;

    private Cymbals() {}

    static List<PercussionSound> all() {
        return List.of(
                PercussionSound.of(42, "Closed Hi-Hat", closed())
                        .level(-4)
                        .pan(-260)
                        .exclusive(HI_HAT),
                PercussionSound.of(44, "Pedal Hi-Hat", foot())
                        .level(-6)
                        .pan(-260)
                        .exclusive(HI_HAT),
                PercussionSound.of(46, "Open Hi-Hat", open()).level(-2).pan(-260).exclusive(HI_HAT),
                PercussionSound.of(49, "Crash Cymbal 1", crash(92, 2.9)).level(2).pan(-200),
                PercussionSound.of(57, "Crash Cymbal 2", crash(71, 3.0)).level(2).pan(240),
                PercussionSound.of(51, "Ride Cymbal 1", ride(58, 5400, 3.7, 0.36))
                        .level(-3)
                        .pan(280),
                PercussionSound.of(59, "Ride Cymbal 2", ride(81, 3300, 2.8, 0.75))
                        .level(-3)
                        .pan(340),
                PercussionSound.of(53, "Ride Bell", bell()).level(-2).pan(280),
                PercussionSound.of(55, "Splash Cymbal", splash()).pan(-60),
                PercussionSound.of(52, "Chinese Cymbal", china()).level(1).pan(380));
    }

    private static Voice closed() {
        return Cymbal.of(new Plate(150, 1.5, 9000, 0.05), 0.35)
                .struck(0.22, 0.35)
                .ringing(0.16, 0.11)
                .washing(0.9, 1.6)
                .blooming(0.0005)
                .above(2600)
                .tapped(7500, 0.7, 0.9, 0.012)
                .tapped(3800, 0.9, 0.5, 0.018);
    }

    private static Voice foot() {
        return Cymbal.of(new Plate(130, 1.5, 7000, 0.05), 0.4)
                .struck(0.6, 0.35)
                .ringing(0.17, 0.1)
                .washing(0.6, 0.7)
                .blooming(0.006)
                .above(1100)
                .tapped(1800, 0.9, 0.7, 0.03);
    }

    /** The halves touch while they swing: almost all noise, and a sizzle that stays. */
    private static Voice open() {
        return Cymbal.of(new Plate(150, 1.5, 7500, 0.05), 1.35)
                .struck(0.3, 0.35)
                .ringing(1.5, 1.15)
                .washing(0.9, 1.2)
                .blooming(0.008)
                .above(1700)
                .tapped(6500, 0.7, 0.6, 0.02);
    }

    private static Voice crash(double lowest, double seconds) {
        return Cymbal.of(new Plate(lowest, 1.5, 6500, 0.03), seconds)
                .struck(0.5, 0.4)
                .ringing(4.2, 2.1)
                .washing(1.5, 0.75)
                .blooming(0.03)
                .above(330)
                .tapped(3000, 0.5, 0.5, 0.03);
    }

    private static Voice ride(double lowest, double ping, double seconds, double wash) {
        return Cymbal.of(new Plate(lowest, 1.55, 9500, 0.03), seconds)
                .struck(0.16, 0.35)
                .ringing(1.19 * seconds, 0.55 * seconds)
                .washing(wash, 0.9)
                .blooming(0.03)
                .radiating(0.9)
                .above(600)
                .bell(ping * 0.62, 0.2, 0.35)
                .bell(ping * 0.83, 0.22, 0.3)
                .bell(ping, 0.25, 0.22)
                .bell(ping * 1.27, 0.2, 0.16)
                .tapped(ping, 0.8, 1.1, 0.03)
                .tapped(9000, 0.8, 0.6, 0.012);
    }

    private static Voice bell() {
        return Cymbal.of(new Plate(58, 1.55, 7000, 0.03), 2.3)
                .struck(0.3, 0.35)
                .ringing(2.4, 1.0)
                .washing(0.1, 0.6)
                .blooming(0.03)
                .above(420)
                .bell(683, 0.5, 2.6)
                .bell(1240, 0.9, 2.3)
                .bell(1985, 0.9, 1.9)
                .bell(2870, 0.8, 1.5)
                .bell(3890, 0.7, 1.1)
                .bell(5120, 0.5, 0.8)
                .bell(6480, 0.35, 0.5)
                .tapped(6000, 0.8, 0.7, 0.015);
    }

    private static Voice splash() {
        return Cymbal.of(new Plate(190, 1.45, 7500, 0.03), 1.4)
                .struck(0.35, 0.4)
                .ringing(1.25, 0.75)
                .washing(1.3, 0.9)
                .blooming(0.008)
                .above(700)
                .tapped(4500, 0.6, 0.6, 0.02);
    }

    /** Turned-up rim: trashy, low modes loud, quick to open and to die. */
    private static Voice china() {
        return Cymbal.of(new Plate(62, 1.32, 3600, 0.09), 1.9)
                .struck(0.6, 0.4)
                .ringing(1.9, 1.2)
                .washing(2.0, 0.35)
                .blooming(0.012)
                .above(240)
                .tapped(1900, 0.5, 0.6, 0.04);
    }
}
