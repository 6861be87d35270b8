package org.kitweft.sound.bank.pitched;

import org.kitweft.sound.bank.render.Decay;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.NoiseBand;
import org.kitweft.sound.bank.render.Wave;

/**
 * An electric piano: a struck tine before a magnetic pickup. A tine is a bar clamped at one end, so
 * its second mode lies 6.27 times above the first (Fletcher and Rossing ch. 2) and is a short bell;
 * the pickup is not linear, so harmonics grow with the swing and fade as it dies.
 */
record TineVoice() implements KeyVoice {
    private static final double ATTACK = 0.34;
    private static final double CLAMPED = 6.267;

    /** Decay of the fundamental in seconds. */
    static double decay(int key) {
        return 9 * StrictMath.pow(2, (40 - key) / 20.0);
    }

    @Override
    public Rendered render(int key, double strength, Noise noise) {
        int rate = key < 60 ? 16_000 : 22_050;
        Loop loop = Loop.near(Pitch.hertz(key), rate, 0.07);
        int start = (int) (ATTACK * rate);
        Wave wave = new Wave(rate, new double[start + loop.frames() + 8]);
        double swing = 0.15 + 0.85 * strength;
        double low = Math.min(1.3, StrictMath.pow(2, (60 - key) / 30.0));
        double[] bend = {1, 0.55 * low, 0.26 * low, 0.13 * low, 0.06 * low, 0.03 * low};
        for (int n = 1; n <= bend.length; n++) {
            int power = n - 1;
            double weight = bend[power];
            Partials.add(
                    wave,
                    n * loop.hertz(),
                    t -> {
                        double left =
                                swing
                                        * (0.45
                                                + 0.55
                                                        * Decay.after(
                                                                Math.min(t, ATTACK * 0.95), 1.2));
                        return weight * StrictMath.pow(left, power);
                    });
        }
        double bell = 0.3 * StrictMath.pow(strength, 1.3) * low;
        Partials.add(
                wave,
                CLAMPED * loop.hertz(),
                t -> t < ATTACK * 0.95 ? bell * Decay.after(t, 0.3) : 0);
        new NoiseBand(900, 0.7, 0.05 * strength, 0.001, 0.03).addTo(wave, noise, 0);
        return new Rendered(wave, start, start + loop.frames());
    }
}
