package org.kitweft.sound.bank.physics;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.BesselJ;

/**
 * The circular membrane, fixed at its rim: mode (m,n) has m nodal diameters and n nodal circles,
 * the rim counted.
 *
 * <p>Sources: Rayleigh, <i>The Theory of Sound</i>, ch. 9; Fletcher and Rossing, <i>The Physics of
 * Musical Instruments</i>, ch. 3.
 */
public final class Membrane {
    /** Eight diameters and five circles reach ten times the lowest frequency. */
    private static final BesselZeros ZEROS = new BesselZeros(9, 5);

    private static final List<Shape> SHAPES = shapes();

    private Membrane() {}

    /**
     * One standing shape of the membrane.
     *
     * @param m nodal diameters, from 0
     * @param n nodal circles, from 1
     * @param ratio its frequency over that of (0,1), no air
     */
    public record Shape(int m, int n, double ratio) {
        /**
         * How strongly a strike at {@code place} (0 centre, 1 rim) drives this shape:
         * J<sub>m</sub>(j r/a), over the shape's own norm J<sub>m+1</sub>(j).
         */
        public double drive(double place) {
            double zero = ZEROS.zero(m, n);
            return BesselJ.value(m, zero * place) / Math.abs(BesselJ.value(m + 1, zero));
        }

        /** The wave number times the radius: the zero of the Bessel function itself. */
        public double zero() {
            return ZEROS.zero(m, n);
        }
    }

    /** All shapes known here, from low to high. */
    public static List<Shape> all() {
        return SHAPES;
    }

    private static List<Shape> shapes() {
        List<Shape> found = new ArrayList<>();
        for (int m = 0; m < ZEROS.orders(); m++) {
            for (int n = 1; n <= ZEROS.perOrder(); n++) {
                found.add(new Shape(m, n, ZEROS.zero(m, n) / ZEROS.zero(0, 1)));
            }
        }
        found.sort((a, b) -> Double.compare(a.ratio(), b.ratio()));
        return List.copyOf(found);
    }
}
