package org.kitweft.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import org.kitweft.sound.bank.render.Biquad;

/**
 * Integrated loudness of two channels after ITU-R BS.1770-4 (2015): K-weighted mean squares of
 * blocks of 400 ms that overlap by three quarters, those below −70 LUFS left out, then those more
 * than 10 LU below the mean of what is left.
 */
final class IntegratedLoudness {
    private static final double BLOCK = 0.4;
    private static final double STEP = 0.1;
    private static final double ABSOLUTE_GATE = -70;
    private static final double RELATIVE_GATE = -10;

    private IntegratedLoudness() {}

    /** In LUFS; minus infinity for silence. */
    static double of(double rate, double[]... channels) {
        int block = (int) Math.round(BLOCK * rate);
        int step = (int) Math.round(STEP * rate);
        double[] powers = new double[channels[0].length];
        for (double[] channel : channels) {
            double[] weighted = channel.clone();
            Biquad.kWeightingShelf(rate).run(weighted);
            Biquad.highPass(rate, 38.135, 0.5003).run(weighted);
            for (int i = 0; i < powers.length; i++) {
                powers[i] += weighted[i] * weighted[i];
            }
        }
        List<Double> blocks = new ArrayList<>();
        for (int at = 0; at + block <= powers.length; at += step) {
            double sum = 0;
            for (int i = at; i < at + block; i++) {
                sum += powers[i];
            }
            blocks.add(sum / block);
        }
        double loud = mean(blocks, power -> lufs(power) > ABSOLUTE_GATE);
        double gate = Math.max(ABSOLUTE_GATE, lufs(loud) + RELATIVE_GATE);
        return lufs(mean(blocks, power -> lufs(power) > gate));
    }

    private static double mean(List<Double> powers, DoublePredicate in) {
        return powers.stream().mapToDouble(Double::doubleValue).filter(in).average().orElse(0);
    }

    private static double lufs(double power) {
        return -0.691 + 10 * Math.log10(power);
    }
}
