package org.kitweft.sound.bank.pitched;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.kitweft.sound.bank.percussion.Congas;
import org.kitweft.sound.bank.physics.Bar;
import org.kitweft.sound.bank.physics.Contact;
import org.kitweft.sound.bank.soundfont.Generator;
import org.kitweft.sound.bank.soundfont.Modulator;
import org.kitweft.sound.bank.voice.Timpano;

/**
 * All pitched instruments of the bank. Decays, levels and contact times by ear and common practice,
 * no source, inside the ranges of Fletcher and Rossing ch. 18 and 19.
 */
public final class Programs {
    /**
     * As long as a synthesizer can let a sound ring when its key is let go: it ends with its
     * sample.
     */
    public static final int RINGS_ON = Generator.timecents(100);

    /** The vibraphone, and the program it stands on, counted from 0. */
    public static final String VIBRAPHONE = "Vibraphone";

    public static final int VIBRAPHONE_PROGRAM = 11;

    /** The vibraphone with its motor running, on the same program of bank 1. */
    public static final String MOTOR = "Vibraphone Motor";

    public static final int MOTOR_BANK = 1;

    /** How far the motor's discs move the level up and down, centibels. */
    public static final int MOTOR_DEPTH = 30;

    private static final int MOD_WHEEL = 1;

    /**
     * Low notes need it: measured with a band of seven styles, at the common loudness the bass was
     * 12 LU below the drums at one channel volume.
     */
    private static final int BASS_LEVEL = 6;

    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private Programs() {}

    /** Every instrument; their names are what {@link Families} refers to. */
    public static List<Program> all() {
        return List.of(
                bars("Glockenspiel", 74, 106, 8, glockenspiel(), k -> 5 * fall(k, 79, 26), 2.5),
                vibraphone(),
                bars("Marimba", 38, 98, 6, marimba(), k -> 1.9 * fall(k, 48, 17), 9),
                bars("Xylophone", 62, 104, 7, xylophone(), k -> 0.75 * fall(k, 65, 20), 9),
                strings("Acoustic Bass", every(28, 64, 6), ACOUSTIC, 0.25),
                strings(
                        "Electric Bass",
                        List.of(28, 34, 40, 46, 52, 58, 64, 72, 82, 92),
                        ELECTRIC,
                        0.12),
                tines(),
                horns("Horn", new HornVoice(1, 1.5)),
                horns("Brass Section", new HornVoice(3, 0.75)),
                timpani(),
                drums("Melodic Tom", List.of(36, 43, 50, 57, 64), 0),
                djembe());
    }

    private static final StringVoice ACOUSTIC = new StringVoice(0.28, 0, 1.25, 5.5, 0.75, 0.05);
    private static final StringVoice ELECTRIC = new StringVoice(0.19, 0.13, 0.62, 9, 0.45, 0.02);

    private static BarVoice glockenspiel() {
        return new BarVoice(
                Bar.UNIFORM,
                Contact.ofMillis(0.3, 0.45),
                0.8,
                k -> 5 * fall(k, 79, 26),
                0.35,
                0.03);
    }

    private static BarVoice marimba() {
        return new BarVoice(
                Bar.MARIMBA,
                Contact.ofMillis(0.8, 0.5),
                1.6,
                k -> 1.9 * fall(k, 48, 17),
                0.25,
                0.14);
    }

    private static BarVoice xylophone() {
        return new BarVoice(
                Bar.XYLOPHONE,
                Contact.ofMillis(0.3, 0.45),
                1.1,
                k -> 0.75 * fall(k, 65, 20),
                0.35,
                0.16);
    }

    /** Halves a decay every {@code keys} keys above {@code from}. */
    private static double fall(int key, int from, double keys) {
        return StrictMath.pow(2, (from - key) / keys);
    }

    private static List<Integer> every(int from, int to, int step) {
        List<Integer> roots = new ArrayList<>();
        for (int key = from; key <= to; key += step) {
            roots.add(key);
        }
        return roots;
    }

    private static Program bars(
            String name,
            int from,
            int to,
            int step,
            BarVoice voice,
            IntToDoubleFunction decay,
            double release) {
        return new Program(
                name,
                every(from, to, step),
                voice,
                true,
                0,
                decay,
                root -> dying(decay.applyAsDouble(root), release),
                List.of());
    }

    /**
     * The motor turns discs in the tubes: off, until the modulation wheel is raised. The JDK's
     * synthesizer passes over a file's modulators; for it there is {@link #MOTOR}.
     */
    private static Program vibraphone() {
        IntToDoubleFunction decay = k -> 7 * fall(k, 53, 30);
        BarVoice voice =
                new BarVoice(Bar.VIBRAPHONE, Contact.ofMillis(0.7, 0.5), 1.3, decay, 0.16, 0.06);
        return new Program(
                VIBRAPHONE,
                every(54, 90, 6),
                voice,
                true,
                0,
                decay,
                root -> {
                    Map<Generator, Integer> all = dying(decay.applyAsDouble(root), 1.2);
                    all.put(Generator.FREQUENCY_MOD_LFO, Generator.lfoCents(5.5));
                    return all;
                },
                List.of(
                        Modulator.ofController(
                                MOD_WHEEL, Generator.MOD_LFO_TO_VOLUME, MOTOR_DEPTH)));
    }

    private static Program strings(
            String name, List<Integer> roots, StringVoice voice, double release) {
        return new Program(
                name,
                roots,
                voice,
                true,
                BASS_LEVEL,
                voice::decay,
                root -> dying(voice.decay(root), release),
                List.of());
    }

    private static Program tines() {
        return new Program(
                "Electric Piano",
                every(36, 92, 7),
                new TineVoice(),
                true,
                1,
                TineVoice::decay,
                root -> dying(TineVoice.decay(root), 0.35),
                List.of());
    }

    private static Program horns(String name, HornVoice voice) {
        return new Program(
                name,
                every(38, 86, 8),
                voice,
                true,
                -2,
                k -> INFINITE,
                root -> {
                    Map<Generator, Integer> all = new EnumMap<>(Generator.class);
                    all.put(Generator.ATTACK, Generator.timecents(0.006));
                    all.put(Generator.RELEASE, Generator.timecents(0.25));
                    all.put(Generator.FREQUENCY_VIBRATO_LFO, Generator.lfoCents(5));
                    return all;
                },
                List.of());
    }

    private static Program timpani() {
        return new Program(
                "Timpani",
                every(40, 55, 5),
                (key, strength, noise) ->
                        Rendered.ending(
                                new Timpano(Pitch.hertz(key), 16_000, 2.0).render(strength, noise)),
                false,
                2,
                k -> INFINITE,
                root -> ringing(),
                List.of());
    }

    private static Program drums(String name, List<Integer> roots, double level) {
        return new Program(
                name,
                roots,
                (key, strength, noise) ->
                        Rendered.ending(
                                Congas.open(
                                                Pitch.hertz(key) * CONGA_OVER_KEY,
                                                0.62 * fall(key, 43, 30))
                                        .render(strength, noise)),
                false,
                level,
                k -> INFINITE,
                root -> ringing(),
                List.of());
    }

    /** The tumba stands at key 43, and sounds a fifth below the conga on the percussion channel. */
    private static final double CONGA_OVER_KEY = 131.0 / 98.0;

    private static Program djembe() {
        return new Program(
                "Djembe",
                Djembe.ROOTS,
                (key, strength, noise) ->
                        Rendered.ending(Djembe.voice(key).render(strength, noise)),
                false,
                0,
                k -> INFINITE,
                root -> ringing(),
                List.of());
    }

    private static Map<Generator, Integer> dying(double decay, double release) {
        Map<Generator, Integer> all = new EnumMap<>(Generator.class);
        all.put(Generator.DECAY, Generator.timecents(decay * 100 / 60));
        all.put(Generator.SUSTAIN, 1000);
        all.put(Generator.RELEASE, Generator.timecents(Math.min(release, decay) * 100 / 60));
        return all;
    }

    private static Map<Generator, Integer> ringing() {
        Map<Generator, Integer> all = new EnumMap<>(Generator.class);
        all.put(Generator.RELEASE, RINGS_ON);
        return all;
    }
}
