package org.kitweft.sound.bank.voice;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.physics.Contact;
import org.kitweft.sound.bank.physics.Membrane;
import org.kitweft.sound.bank.physics.Mode;
import org.kitweft.sound.bank.physics.TwoHeads;
import org.kitweft.sound.bank.render.Glide;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * A struck membrane with what is around it: a second head, a shell, air, and the tap of the stick.
 * Put together by its methods, then only rendered.
 *
 * <p>Overtones follow the ideal membrane: on these small, tight heads air weighs little (the
 * kettledrum, where it matters, is {@link Timpano}).
 */
public final class Drum implements Voice {
    private final double fundamental;
    private final double seconds;
    private double place = 0.3;
    private Contact contact = Contact.ofMillis(2, 0.3);
    private double ring = 0.5;
    private double damping = 0.5;
    private double thump = 1;
    private double tilt = 0.3;
    private Glide glide = Glide.NONE;
    private double secondHead;
    private double air;
    private final List<Tap> taps = new ArrayList<>();
    private final List<Mode> body = new ArrayList<>();

    private Drum(double fundamental, double seconds) {
        this.fundamental = fundamental;
        this.seconds = seconds;
    }

    /** A head whose mode (0,1) has {@code hertz}, rendered for {@code seconds}. */
    public static Drum tuned(double hertz, double seconds) {
        return new Drum(hertz, seconds);
    }

    /** Where it is struck (0 centre, 1 rim), and with how long a contact. */
    public Drum struck(double at, double millis, double exponent) {
        place = at;
        contact = Contact.ofMillis(millis, exponent);
        return this;
    }

    /**
     * Decay of the fundamental, and how much faster each further multiple of its frequency dies: 0
     * for alike.
     */
    public Drum ringing(double decay, double faster) {
        ring = decay;
        damping = faster;
        return this;
    }

    /**
     * Factor on the decay of the modes without nodal diameter, which radiate best, so lose most.
     */
    public Drum thumping(double factor) {
        thump = factor;
        return this;
    }

    /** Power of the frequency with which overtones radiate. */
    public Drum tilted(double power) {
        tilt = power;
        return this;
    }

    /** Pitch above the settled one at the hardest stroke, and the time it settles in. */
    public Drum gliding(double semitones, double settling) {
        glide = new Glide(semitones, settling);
        return this;
    }

    /** A second head alone at {@code hertz}, joined by an air spring of {@code spring} Hz. */
    public Drum secondHead(double hertz, double spring) {
        secondHead = hertz;
        air = spring;
        return this;
    }

    /** Adds the noise of the contact. */
    public Drum tapped(double hertz, double q, double level, double decay) {
        taps.add(new Tap(hertz, q, level, decay));
        return this;
    }

    /** Adds a mode of shell, rim or the air inside; amplitude against the head's fundamental. */
    public Drum body(double hertz, double amplitude, double decay) {
        body.add(new Mode(hertz, amplitude, decay));
        return this;
    }

    @Override
    public Wave render(double strength, Noise noise) {
        Wave wave = head(strength);
        for (Tap tap : taps) {
            tap.addTo(wave, strength, noise);
        }
        return wave;
    }

    /** The ringing without taps, peak 1. */
    Wave head(double strength) {
        Wave wave = new Wave(RATE, seconds);
        // The stretch of the head goes with the square of its swing: Fletcher and Rossing ch. 5.
        new Glide(glide.semitones() * strength * strength, glide.seconds())
                .add(wave, modes(strength));
        return wave.toPeak(1);
    }

    private List<Mode> modes(double strength) {
        List<Mode> modes = new ArrayList<>();
        for (Membrane.Shape shape : Membrane.all()) {
            double hertz = fundamental * shape.ratio();
            double amplitude =
                    shape.drive(place)
                            * force(hertz, strength)
                            * StrictMath.pow(shape.ratio(), tilt);
            double decay = ring / (1 + damping * (shape.ratio() - 1));
            if (shape.m() == 0) {
                decay *= thump;
            }
            if (secondHead > 0 && shape.m() == 0 && shape.n() == 1) {
                TwoHeads pair = TwoHeads.joined(fundamental, secondHead, air);
                modes.add(new Mode(pair.together(), amplitude, decay));
                modes.add(new Mode(pair.against(), amplitude * 0.5, decay * 0.6));
            } else {
                modes.add(new Mode(hertz, amplitude, decay));
            }
        }
        for (Mode mode : body) {
            modes.add(mode.scaled(force(mode.frequency(), strength)));
        }
        return modes;
    }

    private double force(double hertz, double strength) {
        return contact.spectrum(hertz, strength) / contact.spectrum(fundamental, strength);
    }
}
