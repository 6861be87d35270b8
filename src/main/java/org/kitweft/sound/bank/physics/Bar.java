package org.kitweft.sound.bank.physics;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Bars with free ends: the modes of a uniform one from beam theory, and those of the keyboard
 * instruments whose undercut tunes the overtones.
 *
 * <p>Sources: Fletcher and Rossing, <i>The Physics of Musical Instruments</i>, ch. 2 (Euler and
 * Bernoulli's beam) and 19 (tuned bars).
 */
public enum Bar {
    /** Not undercut: glockenspiel, triangle, clave. */
    UNIFORM(uniform(12)),
    /** Second mode two octaves up, third three octaves and a minor third. */
    MARIMBA(List.of(1.0, 3.98, 9.6, 17.2, 26.0)),
    /** Second mode two octaves up. */
    VIBRAPHONE(List.of(1.0, 3.99, 10.1, 18.3, 28.0)),
    /** Second mode a twelfth up. */
    XYLOPHONE(List.of(1.0, 3.0, 6.1, 11.4, 18.0));

    @SuppressWarnings(
            "ImmutableEnumChecker") // List.of: cannot be changed, which the checker does not see
    private final List<Double> ratios;

    Bar(List<Double> ratios) {
        this.ratios = ratios;
    }

    /** Frequency of mode {@code n} (from 1) over that of the first. */
    public double ratio(int n) {
        return ratios.get(n - 1);
    }

    /** Number of modes known. */
    public int modes() {
        return ratios.size();
    }

    /** Solves cos x cosh x = 1; frequencies go with the square of x. */
    private static List<Double> uniform(int modes) {
        List<Double> ratios = new ArrayList<>();
        double first = root(1);
        for (int n = 1; n <= modes; n++) {
            double x = root(n) / first;
            ratios.add(x * x);
        }
        return List.copyOf(ratios);
    }

    private static double root(int n) {
        double near = (2 * n + 1) * Math.PI / 2;
        // Divided by cosh, so that nothing overflows for high modes.
        return new BrentSolver(1e-12)
                .solve(
                        100,
                        x -> StrictMath.cos(x) - 1 / StrictMath.cosh(x),
                        near - 0.3,
                        near + 0.3);
    }
}
