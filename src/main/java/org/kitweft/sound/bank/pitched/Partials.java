package org.kitweft.sound.bank.pitched;

import java.util.function.DoubleUnaryOperator;
import org.kitweft.sound.bank.render.Wave;

/**
 * Adds sines under slow functions of time; a turning phasor gives the sine, the function is read
 * now and then.
 */
final class Partials {
    /** The level is renewed every so many samples and runs straight between. */
    private static final int BLOCK = 32;

    private Partials() {}

    /**
     * Adds sin(2&pi; {@code hertz} t) times {@code level}(t), t in seconds from the wave's start.
     */
    static void add(Wave out, double hertz, DoubleUnaryOperator level) {
        if (hertz > 0.47 * out.rate()) {
            return;
        }
        double[] samples = out.samples();
        double angle = 2 * Math.PI * hertz / out.rate();
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        double now = level.applyAsDouble(0);
        for (int b = 0; b < samples.length; b += BLOCK) {
            double next = level.applyAsDouble((double) (b + BLOCK) / out.rate());
            // Started anew each block, so that rounding never piles up and loops close.
            double x = StrictMath.cos(angle * b);
            double y = StrictMath.sin(angle * b);
            double step = (next - now) / BLOCK;
            int end = Math.min(samples.length, b + BLOCK);
            for (int i = b; i < end; i++) {
                samples[i] += now * y;
                now += step;
                double turned = cos * x - sin * y;
                y = sin * x + cos * y;
                x = turned;
            }
            now = next;
        }
    }
}
