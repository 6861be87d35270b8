package org.kitweft.sound.bank.percussion;

import java.util.List;
import org.kitweft.sound.bank.physics.Bar;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.voice.Body;
import org.kitweft.sound.bank.voice.Grains;
import org.kitweft.sound.bank.voice.Shakes;
import org.kitweft.sound.bank.voice.Voice;

/** Wood, seeds, scrapers and hands. Values by ear, no source, where none is named. */
final class Blocks {
    private static final int GUIRO = 3;

    private Blocks() {}

    static List<PercussionSound> all() {
        return List.of(
                PercussionSound.of(31, "Sticks", sticks()).level(-3),
                PercussionSound.of(39, "Hand Clap", clap()),
                PercussionSound.of(58, "Vibraslap", vibraslap()).level(-2).pan(180),
                PercussionSound.of(69, "Cabasa", cabasa()).level(-4).pan(200),
                PercussionSound.of(70, "Maracas", maracas()).level(-4).pan(-200),
                PercussionSound.of(73, "Short Guiro", guiro(11, 0.09))
                        .level(-3)
                        .pan(240)
                        .exclusive(GUIRO),
                PercussionSound.of(74, "Long Guiro", guiro(34, 0.42))
                        .level(-3)
                        .pan(240)
                        .exclusive(GUIRO),
                PercussionSound.of(75, "Claves", claves()).level(-2).pan(-100),
                PercussionSound.of(76, "Hi Wood Block", block(1046)).level(-2).pan(-180),
                PercussionSound.of(77, "Low Wood Block", block(740)).level(-2).pan(-180),
                PercussionSound.of(82, "Shaker", shaker()).level(-4).pan(-160),
                PercussionSound.of(85, "Castanets", castanets()).level(-2).pan(80));
    }

    private static Voice sticks() {
        return Body.lasting(0.2)
                .struck(0.15, 0.3)
                .bar(Bar.UNIFORM, 1310, 0.05, 0.4, 0.03, 0)
                .mode(3050, 0.9, 0.03)
                .tapped(5500, 0.8, 0.4, 0.006);
    }

    /** Several hands, a few milliseconds apart, then the room between them. */
    private static Voice clap() {
        return (strength, noise) -> {
            var wave =
                    Grains.of(Shakes.at(0, 0.7, 0.011, 0.8, 0.0225, 0.9, 0.032, 1), 0.35, 0.009)
                            .body(1050, 1.4, 1)
                            .body(2300, 1.2, 0.5)
                            .body(3900, 1, 0.12)
                            .render(strength, noise)
                            .toPeak(1);
            new NoiseBand(1200, 1.1, 0.12, 0.002, 0.28).addTo(wave, noise, 0.032);
            return wave;
        };
    }

    /** Loose pins rattle in a box after one blow. */
    private static Voice vibraslap() {
        return Grains.of(Shakes.rattling(26, 1.0), 0.9, 0.004)
                .body(1750, 14, 1)
                .body(2620, 16, 0.9)
                .body(3900, 10, 0.6)
                .body(5600, 6, 0.4);
    }

    /** Beads dragged over a ridged cylinder. */
    private static Voice cabasa() {
        return Grains.of(Shakes.shaken(2600, 0.028, 0.11), 0.22, 0.0005)
                .body(5100, 1.6, 0.5)
                .body(8800, 1.4, 1)
                .body(13_000, 1.2, 0.9);
    }

    private static Voice maracas() {
        return Grains.of(Shakes.shaken(1000, 0.012, 0.07), 0.14, 0.0006)
                .body(3300, 4, 1)
                .body(5400, 3, 0.8)
                .body(9500, 1.5, 0.4);
    }

    private static Voice shaker() {
        return Grains.of(Shakes.shaken(3600, 0.05, 0.13), 0.28, 0.0005)
                .body(4300, 2, 0.35)
                .body(6700, 2, 1)
                .body(10_200, 1.5, 0.7);
    }

    private static Voice guiro(int teeth, double seconds) {
        return Grains.of(Shakes.scraped(teeth, seconds), seconds + 0.12, 0.0016)
                .body(1180, 5, 0.7)
                .body(2500, 4, 1)
                .body(3950, 3, 0.7)
                .body(7200, 2, 0.3);
    }

    /** Two hardwood rods: bars with free ends, the lower one cupped in the hand. */
    private static Voice claves() {
        return Body.lasting(0.3)
                .struck(0.14, 0.5)
                .bar(Bar.UNIFORM, 2480, 0.16, 0.7, 0, 0)
                .tapped(8000, 0.8, 0.15, 0.004);
    }

    /** A slot cut into a block: the lip as a short bar over a cavity tuned near it. */
    private static Voice block(double hertz) {
        return Body.lasting(0.3)
                .struck(0.45, 0.55)
                .modes(
                        hertz, 1, 1, 0.11, 1.36, 0.25, 0.05, 2.48, 0.5, 0.05, 3.9, 0.35, 0.035, 5.6,
                        0.25, 0.02)
                .tapped(hertz * 4.5, 0.8, 0.5, 0.01);
    }

    /** Two shells close on each other and bounce once. */
    private static Voice castanets() {
        return Grains.of(Shakes.at(0, 0.6, 0.024, 1), 0.2, 0.0008)
                .body(1480, 16, 1)
                .body(2230, 18, 1)
                .body(3350, 16, 0.8)
                .body(5100, 10, 0.5);
    }
}
