package org.kitweft.sound.bank.pitched;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.kitweft.sound.bank.physics.Bar;
import org.kitweft.sound.bank.physics.Contact;
import org.kitweft.sound.bank.physics.Mode;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.render.Resonators;
import org.kitweft.sound.bank.render.Wave;

/**
 * A bar struck by a mallet over its resonator. The fundamental is rendered without decay and
 * looped, and the synthesizer's envelope lets it die; the overtones die inside the sample, relative
 * to it.
 *
 * @param bar its modes
 * @param contact of the mallet
 * @param resonator how much stronger the tube makes the fundamental
 * @param decay of the fundamental in seconds, by key
 * @param overtones decay of the second mode over that of the first; the third takes the square root
 *     of the ratio more
 * @param knock level of the mallet's noise
 */
record BarVoice(
        Bar bar,
        Contact contact,
        double resonator,
        IntToDoubleFunction decay,
        double overtones,
        double knock)
        implements KeyVoice {
    private static final double LOOP = 0.05;

    @Override
    public Rendered render(int key, double strength, Noise noise) {
        int rate = key < 74 ? 22_050 : 44_100;
        Loop loop = Loop.near(Pitch.hertz(key), rate, LOOP);
        double main = decay.applyAsDouble(key);
        double attack = Math.min(0.32, 0.06 + main * overtones * 0.6);
        int start = (int) (attack * rate);
        Wave wave = new Wave(rate, new double[start + loop.frames() + 8]);
        Contact here = contactAt(loop.hertz());
        double base = here.spectrum(loop.hertz(), strength);
        List<Mode> above = new ArrayList<>();
        for (int n = 2; n <= bar.modes(); n++) {
            double hertz = loop.hertz() * bar.ratio(n);
            double force = here.spectrum(hertz, strength) / base / resonator;
            double time = main * overtones / StrictMath.sqrt(bar.ratio(n) / bar.ratio(2));
            // Only what dies faster than the fundamental is left to the sample.
            above.add(new Mode(hertz, force, 1 / (1 / time - 1 / main)));
        }
        Resonators.add(wave, above);
        double middle = (0.3 + 0.7 * strength) / (1.2 * here.seconds());
        new NoiseBand(middle, 0.6, knock * StrictMath.pow(strength, 1.5), 0.0003, 0.02)
                .addTo(wave, noise, 0);
        fade(wave.samples(), start);
        // A tube answers within some periods, not at once.
        double rise = 2.5 / loop.hertz();
        Partials.add(wave, loop.hertz(), t -> 1 - 0.5 * StrictMath.exp(-t / rise));
        return new Rendered(wave, start, start + loop.frames());
    }

    /**
     * High bars are light and thrown off sooner: contact is given for 262 Hz, and shrinks almost
     * with the pitch.
     */
    private Contact contactAt(double hertz) {
        return new Contact(
                contact.seconds() * StrictMath.pow(Pitch.hertz(60) / hertz, 0.8),
                contact.exponent());
    }

    /** The overtones are gone when the loop begins. */
    private static void fade(double[] samples, int start) {
        int from = start * 6 / 10;
        for (int i = from; i < samples.length; i++) {
            double way = Math.min(1, (double) (i - from) / (start - from));
            samples[i] *= 0.5 + 0.5 * StrictMath.cos(Math.PI * way);
        }
    }
}
