package org.kitweft.sound.bank.percussion;

import java.util.List;
import org.kitweft.sound.bank.physics.Bar;
import org.kitweft.sound.bank.render.Wave;
import org.kitweft.sound.bank.voice.Body;
import org.kitweft.sound.bank.voice.Grains;
import org.kitweft.sound.bank.voice.Shakes;
import org.kitweft.sound.bank.voice.Voice;

/**
 * Cowbell, agogo, triangle, tambourine and other small metal. Values by ear, no source, where none
 * is named.
 */
final class Bells {
    private static final int TRIANGLE = 5;

    private Bells() {}

    static List<PercussionSound> all() {
        return List.of(
                PercussionSound.of(33, "Metronome Click", click()).level(-2),
                PercussionSound.of(34, "Metronome Bell", metronomeBell()).level(-2),
                PercussionSound.of(54, "Tambourine", tambourine()).level(-2).pan(120),
                PercussionSound.of(56, "Cowbell", cowbell(587)).level(-1).pan(60),
                PercussionSound.of(67, "High Agogo", agogo(1175)).level(-2).pan(-140),
                PercussionSound.of(68, "Low Agogo", agogo(783)).level(-2).pan(-140),
                PercussionSound.of(80, "Mute Triangle", triangle(0.14))
                        .level(-5)
                        .pan(220)
                        .exclusive(TRIANGLE),
                PercussionSound.of(81, "Open Triangle", triangle(2.5))
                        .level(-5)
                        .pan(220)
                        .exclusive(TRIANGLE),
                PercussionSound.of(83, "Jingle Bell", jingle()).level(-3).pan(-80),
                PercussionSound.of(84, "Belltree", belltree()).level(-3).pan(100));
    }

    private static Voice click() {
        return Body.lasting(0.12)
                .struck(0.2, 0.5)
                .modes(1760, 1, 1, 0.035, 1.52, 0.7, 0.025, 2.6, 0.5, 0.02, 3.9, 0.3, 0.012)
                .tapped(6000, 0.8, 0.3, 0.006);
    }

    private static Voice metronomeBell() {
        return Body.lasting(0.6)
                .struck(0.1, 0.8)
                .modes(2637, 1, 1, 0.6, 1.004, 0.5, 0.6, 2.41, 0.6, 0.35, 4.13, 0.35, 0.2)
                .tapped(8000, 0.8, 0.6, 0.015);
    }

    /** Two plates bent to a box: two strong modes near a fifth apart, and the plates' own above. */
    private static Voice cowbell(double hertz) {
        return Body.lasting(0.7)
                .struck(0.45, 0.4)
                .modes(
                        hertz, 1, 1, 0.45, 1.483, 0.95, 0.38, 2.31, 0.4, 0.24, 2.96, 0.5, 0.2, 3.74,
                        0.35, 0.16, 4.62, 0.3, 0.13, 6.05, 0.25, 0.1, 7.7, 0.2, 0.08)
                .tapped(2400, 0.8, 0.5, 0.02);
    }

    private static Voice agogo(double hertz) {
        return Body.lasting(0.9)
                .struck(0.3, 0.35)
                .modes(
                        hertz, 1, 1, 0.65, 1.006, 0.4, 0.6, 2.62, 0.7, 0.5, 3.47, 0.3, 0.35, 4.95,
                        0.45, 0.28, 7.6, 0.25, 0.15)
                .tapped(4800, 0.8, 0.3, 0.008);
    }

    /**
     * A bent steel rod of some 50 cm by 1 cm: f1 = 3.56 (d/4) c / L&sup2; = 180 Hz, higher modes by
     * beam theory.
     */
    private static Voice triangle(double ring) {
        return Body.lasting(Math.min(1.9, ring * 1.2))
                .thrifty()
                .struck(0.12, 0.3)
                .mode(180, 0.02, ring * 0.5)
                .bar(Bar.UNIFORM, 180 * 5.404, ring, 0.22, 0.011, 4500)
                .bar(Bar.UNIFORM, 180 * 8.933, ring, 0.25, 0.007, 4500)
                .tapped(9000, 0.8, 0.15, 0.006);
    }

    private static Voice tambourine() {
        return Grains.of(
                        (strength, noise) -> {
                            List<Grains.Grain> grains =
                                    Shakes.shaken(420, 0.004, 0.24).lay(strength, noise);
                            grains.add(new Grains.Grain(0, 2));
                            return grains;
                        },
                        0.42,
                        0.0012)
                .body(310, 2, 0.4)
                .body(4150, 22, 0.8)
                .body(6350, 25, 1)
                .body(8200, 25, 1)
                .body(10_700, 25, 0.9)
                .body(13_300, 20, 0.7);
    }

    private static Voice jingle() {
        return Grains.of(Shakes.shaken(160, 0.01, 0.4), 0.6, 0.0008)
                .body(2730, 60, 1)
                .body(3380, 60, 1)
                .body(4870, 70, 0.9)
                .body(5920, 70, 0.8)
                .body(7760, 60, 0.6);
    }

    /** A row of small bells brushed from high to low. */
    private static Voice belltree() {
        return (strength, noise) -> {
            var wave = new Wave(Voice.RATE, 1.1);
            for (int i = 0; i < 14; i++) {
                double hertz = 6200 * StrictMath.pow(0.925, i);
                Voice one =
                        Body.lasting(1.2)
                                .struck(0.05, 0.9)
                                .modes(hertz, 1, 1, 1.0, 1.47, 0.5, 0.7, 2.09, 0.4, 0.5)
                                .tapped(11_000, 0.8, 0.3, 0.02);
                wave.add(one.render(strength, noise), 0.6 + 0.03 * i, i * 0.045);
            }
            return wave;
        };
    }
}
