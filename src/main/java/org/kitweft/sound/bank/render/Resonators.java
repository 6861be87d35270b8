package org.kitweft.sound.bank.render;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kitweft.sound.bank.physics.Mode;

/**
 * Sounds many modes at once: each is a decaying sine y[n] = 2r cos&theta; y[n&minus;1] &minus;
 * r&sup2; y[n&minus;2], two multiplications a sample. Modes are taken four at a time, longest
 * first, because one alone would wait for its own last sample.
 */
public final class Resonators {
    /** A mode is followed until it has fallen by 96 dB, the range of 16 bit. */
    private static final double FOLLOWED = 96.0 / 60.0;

    private Resonators() {}

    /**
     * Adds {@code modes} to {@code out}, each starting at 0 upwards (a sine), from the first sample
     * on.
     */
    public static void add(Wave out, List<Mode> modes) {
        List<Mode> audible = new ArrayList<>();
        for (Mode mode : modes) {
            if (mode.frequency() < 0.48 * out.rate() && mode.amplitude() != 0) {
                audible.add(mode);
            }
        }
        audible.sort(Comparator.comparingDouble(Mode::decay).reversed());
        for (int i = 0; i < audible.size(); i += 4) {
            addFour(out, audible.subList(i, Math.min(i + 4, audible.size())));
        }
    }

    private static void addFour(Wave out, List<Mode> modes) {
        double[] c = new double[4];
        double[] d = new double[4];
        double[] before = new double[4];
        for (int i = 0; i < modes.size(); i++) {
            Mode mode = modes.get(i);
            double angle = 2 * Math.PI * mode.frequency() / out.rate();
            double r = Decay.perSample(mode.decay(), out.rate());
            c[i] = 2 * r * StrictMath.cos(angle);
            d[i] = r * r;
            before[i] = -mode.amplitude() * StrictMath.sin(angle) / r;
        }
        run(out.samples(), c, d, before, followed(out, modes.get(0)));
    }

    private static int followed(Wave out, Mode longest) {
        return (int) Math.min(out.length(), Math.ceil(longest.decay() * FOLLOWED * out.rate()));
    }

    private static void run(double[] out, double[] c, double[] d, double[] before, int count) {
        double c0 = c[0];
        double c1 = c[1];
        double c2 = c[2];
        double c3 = c[3];
        double d0 = d[0];
        double d1 = d[1];
        double d2 = d[2];
        double d3 = d[3];
        double y0 = 0;
        double y1 = 0;
        double y2 = 0;
        double y3 = 0;
        double z0 = before[0];
        double z1 = before[1];
        double z2 = before[2];
        double z3 = before[3];
        for (int i = 0; i < count; i++) {
            out[i] += (y0 + y1) + (y2 + y3);
            double x0 = c0 * y0 - d0 * z0;
            double x1 = c1 * y1 - d1 * z1;
            double x2 = c2 * y2 - d2 * z2;
            double x3 = c3 * y3 - d3 * z3;
            z0 = y0;
            z1 = y1;
            z2 = y2;
            z3 = y3;
            y0 = x0;
            y1 = x1;
            y2 = x2;
            y3 = x3;
        }
    }
}
