package org.kitweft.sound.bank.voice;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.physics.Contact;
import org.kitweft.sound.bank.physics.Kettle;
import org.kitweft.sound.bank.physics.Membrane;
import org.kitweft.sound.bank.physics.Mode;
import org.kitweft.sound.bank.render.Glide;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * A kettledrum, struck a quarter of the way in from the rim with felt. The modes (1,1), (2,1),
 * (3,1)… ring and give the pitch; those without nodal diameter push air out of the kettle, so they
 * are a short thump. Source: Fletcher and Rossing ch. 18.
 *
 * @param hertz frequency of (1,1), the pitch
 * @param rate samples a second
 * @param seconds rendered
 */
public record Timpano(double hertz, int rate, double seconds) implements Voice {
    private static final double PLACE = 0.75;

    /** Contact at 110 Hz; a higher, tighter head throws the mallet off sooner. */
    private static final Contact FELT = Contact.ofMillis(3.4, 0.45);

    @Override
    public Wave render(double strength, Noise noise) {
        Wave wave = new Wave(rate, seconds);
        Contact felt =
                new Contact(FELT.seconds() * StrictMath.pow(110 / hertz, 0.7), FELT.exponent());
        List<Mode> modes = new ArrayList<>();
        for (Membrane.Shape shape : Membrane.all()) {
            double frequency = hertz * Kettle.ratio(shape);
            double amplitude = shape.drive(PLACE) * felt.spectrum(frequency, strength);
            modes.add(new Mode(frequency, amplitude * weight(shape), decay(shape)));
        }
        new Glide(0.25 * strength * strength, 0.06).add(wave, modes);
        wave.toPeak(1);
        new Tap(700, 0.6, 0.12, 0.03).addTo(wave, strength, noise);
        return wave;
    }

    private static double weight(Membrane.Shape shape) {
        return shape.n() == 1 && shape.m() > 0 ? 1 : 0.5;
    }

    /**
     * Ringing times near those of an orchestra's drum: long for (2,1) and up, under half a second
     * for (0,n).
     */
    private double decay(Membrane.Shape shape) {
        double slower = Math.sqrt(130 / hertz);
        if (shape.m() == 0) {
            return 0.35 * slower;
        }
        double fine = shape.n() == 1 ? 1 : 0.35;
        double first = shape.m() == 1 ? 2.2 : 2.9;
        return fine * first * slower / (1 + 0.12 * Math.max(0, shape.m() - 2));
    }
}
