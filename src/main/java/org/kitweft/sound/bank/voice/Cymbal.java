package org.kitweft.sound.bank.voice;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.physics.Contact;
import org.kitweft.sound.bank.physics.Mode;
import org.kitweft.sound.bank.physics.Plate;
import org.kitweft.sound.bank.render.Biquad;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.render.Resonators;
import org.kitweft.sound.bank.render.Wave;

/**
 * A cymbal: dense modes of a bowed plate below, noise in bands above where single modes can't be
 * told apart. Struck hard, energy climbs from low modes to high ones, so the highs come later and
 * stronger: they bloom. Put together by its methods, then only rendered.
 *
 * <p>Source: Fletcher and Rossing ch. 20 (modes after Chladni's law, build-up of the range from 3
 * to 5 kHz and above within 10 to 100 ms, decay of the highs first).
 */
public final class Cymbal implements Voice {
    private static final double FIRST_BAND = 2300;
    private static final double BAND_STEP = 1.33;

    private final Plate plate;
    private final double seconds;
    private Contact contact = Contact.ofMillis(0.7, 0.3);
    private double low = 3;
    private double high = 1;
    private double wash = 0.5;
    private double brilliance = 1;
    private double bloom = 0.03;
    private double cut = 250;
    private double radiation = 0.5;
    private final List<Tap> taps = new ArrayList<>();
    private final List<Mode> bell = new ArrayList<>();

    private Cymbal(Plate plate, double seconds) {
        this.plate = plate;
        this.seconds = seconds;
    }

    /** A cymbal with these modes, rendered for {@code seconds}. */
    public static Cymbal of(Plate plate, double seconds) {
        return new Cymbal(plate, seconds);
    }

    /** Contact of the stick's tip or shoulder. */
    public Cymbal struck(double millis, double exponent) {
        contact = Contact.ofMillis(millis, exponent);
        return this;
    }

    /** Decay in seconds near 500 Hz and near 10 kHz. */
    public Cymbal ringing(double atLow, double atHigh) {
        low = atLow;
        high = atHigh;
        return this;
    }

    /**
     * Level of the noise bands against the modes, and how strong the highest are against the
     * lowest.
     */
    public Cymbal washing(double level, double highs) {
        wash = level;
        brilliance = highs;
        return this;
    }

    /** Seconds in which the highs rise at a hard stroke. */
    public Cymbal blooming(double rise) {
        bloom = rise;
        return this;
    }

    /** Nothing below {@code hertz}: thin or clamped plates don't radiate there. */
    public Cymbal above(double hertz) {
        cut = hertz;
        return this;
    }

    /** Power of the frequency with which modes radiate; thin low ones hardly move air. */
    public Cymbal radiating(double power) {
        radiation = power;
        return this;
    }

    /** Adds the noise of the stick. */
    public Cymbal tapped(double hertz, double q, double level, double decay) {
        taps.add(new Tap(hertz, q, level, decay));
        return this;
    }

    /** Adds a single strong mode, as the bell has; amplitude against the modes' peak. */
    public Cymbal bell(double hertz, double amplitude, double decay) {
        bell.add(new Mode(hertz, amplitude, decay));
        return this;
    }

    @Override
    public Wave render(double strength, Noise noise) {
        int rate = Voice.thriftyRate(strength);
        double lasting = seconds * (0.6 + 0.4 * strength);
        Wave wave = new Wave(rate, lasting);
        Resonators.add(wave, modes(strength, noise));
        wave.toPeak(0.6);
        Wave bells = new Wave(rate, lasting);
        Resonators.add(
                bells,
                bell.stream()
                        .map(m -> m.scaled(contact.spectrum(m.frequency(), strength)))
                        .toList());
        wave.add(bells, 1, 0);
        for (double hertz = FIRST_BAND; hertz < 17_500; hertz *= BAND_STEP) {
            band(hertz, strength).addTo(wave, noise, 0);
        }
        for (Tap tap : taps) {
            tap.addTo(wave, strength, noise);
        }
        wave.filter(Biquad.highPass(rate, cut, 0.6));
        return wave;
    }

    private List<Mode> modes(double strength, Noise noise) {
        List<Mode> modes = new ArrayList<>();
        for (double hertz : plate.frequencies(noise::next)) {
            double amplitude =
                    noise.bell()
                            * contact.spectrum(hertz, strength)
                            * StrictMath.pow(hertz / 1000, radiation)
                            * (1
                                    - StrictMath.pow(
                                            hertz / plate.highest() / (1 + plate.stray()), 4));
            modes.add(new Mode(hertz, amplitude, decay(hertz) * noise.between(0.7, 1.3)));
        }
        return modes;
    }

    private NoiseBand band(double hertz, double strength) {
        double height = StrictMath.log(hertz / FIRST_BAND) / StrictMath.log(17_500 / FIRST_BAND);
        double shape = StrictMath.pow(brilliance, height);
        // The transfer to the highs is nonlinear: the softer the stroke, the less reaches them.
        double reached = StrictMath.pow(strength, 0.25 + 1.3 * height);
        double rise = bloom * strength * (0.3 + height);
        return new NoiseBand(hertz, 1.8, wash * 0.16 * shape * reached, rise, decay(hertz));
    }

    private double decay(double hertz) {
        double height = StrictMath.log(Math.max(hertz, 500) / 500) / StrictMath.log(20);
        return low * StrictMath.pow(high / low, height);
    }
}
