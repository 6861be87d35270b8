package org.kitweft.sound.bank.voice;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.physics.Bar;
import org.kitweft.sound.bank.physics.Contact;
import org.kitweft.sound.bank.physics.Mode;
import org.kitweft.sound.bank.render.Glide;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * A struck body of wood or metal with countable modes: bell, block, bar, shell. Put together by its
 * methods, then only rendered.
 */
public final class Body implements Voice {
    private final double seconds;
    private Contact contact = Contact.ofMillis(0.4, 0.25);
    private boolean thrifty;
    private Glide glide = Glide.NONE;
    private final List<Mode> modes = new ArrayList<>();
    private final List<Tap> taps = new ArrayList<>();

    private Body(double seconds) {
        this.seconds = seconds;
    }

    /** Rendered for {@code seconds}. */
    public static Body lasting(double seconds) {
        return new Body(seconds);
    }

    /** Saves space where it rings long. */
    public Body thrifty() {
        thrifty = true;
        return this;
    }

    /** How it is struck. */
    public Body struck(double millis, double exponent) {
        contact = Contact.ofMillis(millis, exponent);
        return this;
    }

    /** Adds one mode. */
    public Body mode(double hertz, double amplitude, double decay) {
        modes.add(new Mode(hertz, amplitude, decay));
        return this;
    }

    /** Adds modes at multiples of {@code hertz}: triples of ratio, amplitude and decay. */
    public Body modes(double hertz, double... triples) {
        for (int i = 0; i < triples.length; i += 3) {
            mode(hertz * triples[i], triples[i + 1], triples[i + 2]);
        }
        return this;
    }

    /**
     * Adds the modes of a bar with free ends.
     *
     * @param hertz the first mode
     * @param decay of the first mode; higher ones die faster, with the power {@code faster} of
     *     their ratio
     * @param split part by which the two planes of bending differ, 0 for one plane
     * @param radiates frequency below which the bar is too thin to move air; 0 for none
     */
    public Body bar(
            Bar bar, double hertz, double decay, double faster, double split, double radiates) {
        for (int n = 1; n <= bar.modes(); n++) {
            double ratio = bar.ratio(n);
            double time = decay / StrictMath.pow(ratio, faster);
            double air = Math.min(1, radiates > 0 ? hertz * ratio / radiates : 1);
            double amplitude = (n % 2 == 1 ? 1 : 0.8) * air;
            mode(hertz * ratio, amplitude, time);
            if (split > 0) {
                mode(hertz * ratio * (1 + split), -0.7 * amplitude, time * 0.9);
            }
        }
        return this;
    }

    /** Adds the noise of the contact. */
    public Body tapped(double hertz, double q, double level, double decay) {
        taps.add(new Tap(hertz, q, level, decay));
        return this;
    }

    /** Pitch that moves after the stroke. */
    public Body gliding(double semitones, double settling) {
        glide = new Glide(semitones, settling);
        return this;
    }

    @Override
    public Wave render(double strength, Noise noise) {
        Wave wave = new Wave(thrifty ? Voice.thriftyRate(strength) : RATE, seconds);
        glide.add(
                wave,
                modes.stream()
                        .map(m -> m.scaled(contact.spectrum(m.frequency(), strength)))
                        .toList());
        wave.toPeak(1);
        for (Tap tap : taps) {
            tap.addTo(wave, strength, noise);
        }
        return wave;
    }
}
