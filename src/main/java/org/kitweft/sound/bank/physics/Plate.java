package org.kitweft.sound.bank.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * The dense, inharmonic modes of a round plate with free edge. Chladni's law: a mode with m nodal
 * diameters and n nodal circles has f = c (m + 2n)<sup>p</sup>, p = 2 for a flat plate, less for a
 * domed one; real plates stray from it, and each pair of modes turned against each other is split a
 * little. Sources: Fletcher and Rossing ch. 3 and 20; Rossing and Perrin, <i>Applied Acoustics</i>
 * 20 (1987) 41.
 *
 * @param lowest frequency of (2,0) in Hz
 * @param power p
 * @param highest no modes above this
 * @param stray part by which each mode strays at most
 */
public record Plate(double lowest, double power, double highest, double stray) {
    /**
     * Frequencies of all modes up to the highest, in no order; {@code chance} gives &minus;1 to 1.
     */
    public List<Double> frequencies(DoubleSupplier chance) {
        List<Double> found = new ArrayList<>();
        double c = lowest / StrictMath.pow(2, power);
        int top = (int) StrictMath.pow(highest / c, 1 / power);
        for (int sum = 2; sum <= top; sum++) {
            for (int n = 0; sum - 2 * n >= 0; n++) {
                double hertz = c * StrictMath.pow(sum, power) * (1 + stray * chance.getAsDouble());
                found.add(hertz);
                if (sum - 2 * n > 0) {
                    found.add(hertz * (1 + 0.004 * chance.getAsDouble()));
                }
            }
        }
        return found;
    }
}
