package org.kitweft.sound.bank.voice;

import org.kitweft.sound.bank.render.Biquad;
import org.kitweft.sound.bank.render.Decay;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * A drum with wires on its lower head. The wires are thrown off by the head's swing and rattle
 * back: noise gated by the motion of the heads, a moment after the stroke, louder against the head
 * in soft strokes than in hard ones. Source for the mechanism: Rossing, Bork, Zhao and Fystrom,
 * <i>J. Acoust. Soc. Am.</i> 92 (1992) 84.
 *
 * @param drum the drum itself
 * @param level of the wires against the head's peak
 * @param rattle seconds in which the wires settle by 60 dB once the head is still
 */
public record Snare(Drum drum, double level, double rattle) implements Voice {
    /** The stroke reaches the lower head through some 14 cm of air. */
    private static final double DELAY = 0.0008;

    @Override
    public Wave render(double strength, Noise noise) {
        Wave wave = drum.render(strength, noise);
        Wave wires = noise.white(wave.rate(), (double) wave.length() / wave.rate());
        gate(wires.samples(), drum.head(strength).samples(), strength);
        // Wires are too light for low frequencies; their own rattle has two broad ranges.
        Wave low = copy(wires).filter(Biquad.bandPass(wave.rate(), 2400, 0.8));
        Wave high = copy(wires).filter(Biquad.highPass(wave.rate(), 3800 + 1500 * strength, 0.7));
        high.filter(Biquad.lowPass(wave.rate(), 5500 + 8000 * strength, 0.6));
        double amount = level * StrictMath.pow(strength, -0.12);
        wave.add(low, amount * 0.9, DELAY);
        wave.add(high, amount * (0.45 + 0.25 * strength), DELAY);
        return wave;
    }

    private void gate(double[] wires, double[] head, double strength) {
        double fall = Decay.perSample(rattle * (0.7 + 0.3 * strength), RATE);
        double swing = 0;
        for (int i = 0; i < wires.length; i++) {
            swing = Math.max(Math.abs(head[i]), swing * fall);
            wires[i] *= StrictMath.pow(swing, 1.15);
        }
    }

    private static Wave copy(Wave wave) {
        return new Wave(wave.rate(), wave.samples().clone());
    }
}
