package org.kitweft.sound.bank.percussion;

import java.util.List;
import org.kitweft.sound.bank.render.Biquad;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.render.Wave;
import org.kitweft.sound.bank.voice.Drum;
import org.kitweft.sound.bank.voice.Tone;
import org.kitweft.sound.bank.voice.Voice;

/** Whistles, cuica, scratches and electronic clicks. Values by ear, no source. */
final class Effects {
    private static final int WHISTLE = 2;
    private static final int CUICA = 4;
    private static final int SCRATCH = 7;
    private static final int RATE = Voice.RATE;

    private Effects() {}

    static List<PercussionSound> all() {
        return List.of(
                PercussionSound.of(27, "High Q", highQ()).level(-4),
                PercussionSound.of(28, "Slap", slap()).level(-2),
                PercussionSound.of(29, "Scratch Push", scratch(700, 2600, 0.14))
                        .level(-4)
                        .exclusive(SCRATCH),
                PercussionSound.of(30, "Scratch Pull", scratch(2100, 500, 0.18))
                        .level(-4)
                        .exclusive(SCRATCH),
                PercussionSound.of(32, "Square Click", squareClick()).level(-5),
                PercussionSound.of(71, "Short Whistle", whistle(0.22))
                        .level(-6)
                        .pan(-60)
                        .exclusive(WHISTLE),
                PercussionSound.of(72, "Long Whistle", whistle(0.75))
                        .level(-6)
                        .pan(-60)
                        .exclusive(WHISTLE),
                PercussionSound.of(78, "Mute Cuica", cuica(640, 760, 0.16))
                        .level(-3)
                        .pan(60)
                        .exclusive(CUICA),
                PercussionSound.of(79, "Open Cuica", cuica(430, 690, 0.42))
                        .level(-3)
                        .pan(60)
                        .exclusive(CUICA));
    }

    private static Voice highQ() {
        return new Tone(
                0.12,
                t -> 300 + 6500 * StrictMath.exp(-t / 0.011),
                t -> StrictMath.exp(-t / 0.03),
                3,
                1.7,
                0);
    }

    private static Voice slap() {
        return Drum.tuned(270, 0.22)
                .struck(0.5, 1, 0.3)
                .ringing(0.07, 0.15)
                .gliding(6, 0.012)
                .tapped(1700, 0.7, 1.6, 0.06)
                .tapped(4300, 0.7, 1.2, 0.03);
    }

    private static Voice scratch(double from, double to, double seconds) {
        return (strength, noise) -> {
            double bend = StrictMath.log(to / from) / seconds;
            Wave wave =
                    new Tone(
                                    seconds + 0.02,
                                    t -> from * StrictMath.exp(bend * t),
                                    t ->
                                            StrictMath.pow(
                                                    StrictMath.sin(
                                                            Math.PI * Math.min(1, t / seconds)),
                                                    0.7),
                                    6,
                                    0.8,
                                    0.9)
                            .render(strength, noise);
            // The needle's path is rough: the tone is torn by slow noise.
            Wave rough = noise.white(RATE, seconds + 0.02).filter(Biquad.lowPass(RATE, 500, 0.7));
            for (int i = 0; i < wave.length(); i++) {
                wave.samples()[i] *= 0.5 + 4 * Math.abs(rough.samples()[i]);
            }
            return wave;
        };
    }

    private static Voice squareClick() {
        return new Tone(
                0.05,
                t -> 1480,
                t -> t < 0.004 ? 1 : StrictMath.exp((0.004 - t) / 0.003),
                15,
                1,
                0);
    }

    /** A pea whirls in the chamber: it shuts the mouth some thirty times a second. */
    private static Voice whistle(double seconds) {
        return new Tone(
                seconds + 0.05,
                t ->
                        2420
                                + 110 * StrictMath.sin(2 * Math.PI * 31 * t)
                                - 300 * StrictMath.exp(-t / 0.008),
                t ->
                        (0.62 + 0.38 * StrictMath.sin(2 * Math.PI * 31 * t))
                                * Math.min(1, t / 0.012)
                                * Math.min(1, Math.max(0, (seconds - t) / 0.03)),
                4,
                1.9,
                0.12);
    }

    /**
     * A wet hand rubs a stick fixed to the head: stick and slip, the pitch pressed up and let down.
     */
    private static Voice cuica(double low, double high, double seconds) {
        return (strength, noise) -> {
            Wave wave =
                    new Tone(
                                    seconds + 0.03,
                                    t ->
                                            low
                                                    + (high - low)
                                                            * StrictMath.sin(
                                                                    Math.PI
                                                                            * Math.min(
                                                                                    1,
                                                                                    t / seconds)),
                                    t ->
                                            Math.min(1, t / 0.02)
                                                    * Math.min(
                                                            1, Math.max(0, (seconds - t) / 0.06)),
                                    9,
                                    0.9,
                                    0.15)
                            .render(strength, noise);
            Wave formed = new Wave(RATE, wave.samples().clone());
            formed.filter(Biquad.bandPass(RATE, 1150, 2.2));
            wave.gain(0.4).add(formed, 1.2, 0).toPeak(1);
            new NoiseBand(1800, 0.8, 0.03, 0.01, seconds).addTo(wave, noise, 0);
            return wave;
        };
    }
}
