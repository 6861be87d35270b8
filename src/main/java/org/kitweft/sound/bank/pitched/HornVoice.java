package org.kitweft.sound.bank.pitched;

import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * A horn-like voice: all harmonics, which rise with the level (the louder, the steeper the wave in
 * the tube), the high ones later in the attack. Source for both: Fletcher and Rossing ch. 14;
 * Risset and Mathews, <i>Physics Today</i> 22 no. 2 (1969) 23.
 *
 * @param players 1, or 3 a little apart in pitch
 * @param dark power of 1/n by which harmonics fall at the hardest stroke
 */
record HornVoice(int players, double dark) implements KeyVoice {
    private static final int RATE = 22_050;
    private static final double ATTACK = 0.2;

    /** How far players lie apart: part of the frequency. */
    private static final double APART = 0.004;

    @Override
    public Rendered render(int key, double strength, Noise noise) {
        double hertz = Pitch.hertz(key);
        // One turn of the players against each other fits the loop exactly.
        double seconds = players == 1 ? 0.12 : 1 / (hertz * APART);
        Loop loop = Loop.near(hertz, RATE, Math.min(0.38, seconds));
        int start = (int) (ATTACK * RATE);
        Wave wave = new Wave(RATE, new double[start + loop.frames() + 8]);
        double fall = dark + 1.5 * (1 - strength);
        double formant = 500 + 900 * strength;
        for (int player = 0; player < players; player++) {
            int apart = players == 1 ? 0 : player - 1;
            double own = (double) (loop.cycles() + apart) * RATE / loop.frames();
            double enters = 0.012 * player + 0.003 * Math.abs(noise.next());
            for (int n = 1; n <= 32 && n * own < 0.45 * RATE; n++) {
                double level = level(n, n * own, fall, formant);
                double rise = 0.014 + 0.0015 * n;
                Partials.add(wave, n * own, t -> level * grown(t - enters, rise));
            }
        }
        return new Rendered(wave, start, start + loop.frames());
    }

    /** Settled by the end of the attack, so that the loop closes. */
    private static double grown(double time, double rise) {
        double until = ATTACK - 0.03;
        return time <= 0 ? 0 : 1 - StrictMath.exp(-Math.min(time, until) / rise);
    }

    /** Flat up to the formant, then falling. */
    private static double level(int n, double hertz, double fall, double formant) {
        double over = Math.max(1, hertz / formant);
        return StrictMath.pow(n, -0.5) * StrictMath.pow(over, -fall);
    }
}
