package org.kitweft.sound.bank.physics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.BesselJ;

/**
 * Zeros j(m,n) of the Bessel functions J<sub>m</sub>: where a circular membrane fixed at its rim
 * can stand still.
 *
 * <p>Found by walking along J<sub>m</sub> until its sign changes and closing in with Brent's
 * method. Checked against Abramowitz and Stegun, <i>Handbook of Mathematical Functions</i>, table
 * 9.5.
 */
public final class BesselZeros {
    /**
     * Neighbouring zeros are at least 2.4 apart for all orders used here, so no step passes two.
     */
    private static final double STEP = 0.5;

    private final double[][] zeros;

    /**
     * Computes the table once.
     *
     * @param orders number of orders m, from 0
     * @param perOrder number of zeros n of each, from 1
     */
    public BesselZeros(int orders, int perOrder) {
        zeros = new double[orders][perOrder];
        for (int m = 0; m < orders; m++) {
            fill(m, zeros[m]);
        }
    }

    /** The n-th (from 1) positive zero of J of order m. */
    public double zero(int m, int n) {
        return zeros[m][n - 1];
    }

    /** Number of orders in this table. */
    public int orders() {
        return zeros.length;
    }

    /** Number of zeros of each order in this table. */
    public int perOrder() {
        return zeros[0].length;
    }

    private static void fill(int m, double[] row) {
        BrentSolver solver = new BrentSolver(1e-11);
        // J_m has no zero between 0 and m (Abramowitz and Stegun 9.5.2), so the walk starts there.
        double from = Math.max(m, STEP);
        double atFrom = BesselJ.value(m, from);
        for (int n = 0; n < row.length; ) {
            double to = from + STEP;
            double atTo = BesselJ.value(m, to);
            if (atFrom * atTo < 0) {
                row[n++] = solver.solve(100, x -> BesselJ.value(m, x), from, to);
            }
            from = to;
            atFrom = atTo;
        }
    }
}
