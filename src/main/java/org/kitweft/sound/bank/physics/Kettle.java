package org.kitweft.sound.bank.physics;

/**
 * A kettledrum's head: the air moves with it and pulls the low modes down, until (1,1), (2,1),
 * (3,1)… stand near 2 : 3 : 4 : 5 : 6.
 *
 * <p>The air adds mass to each mode, less the finer its shape: f = f<sub>vacuum</sub> / &radic;(1 +
 * e (k<sub>11</sub>/k)<sup>p</sup>). That air loading does this: Rossing, <i>Scientific
 * American</i>, November 1982; Fletcher and Rossing ch. 18. The two numbers e and p are fitted here
 * to the ratios given there (1.50, 1.98, 2.44, 2.89), not derived.
 */
public final class Kettle {
    private static final double ADDED_MASS = 0.9;
    private static final double FALL = 1.93;
    private static final double ZERO_11 = 3.83170597;

    private Kettle() {}

    /** Frequency of {@code shape} over that of (1,1), with air and kettle. */
    public static double ratio(Membrane.Shape shape) {
        return shape.zero() / ZERO_11 * Math.sqrt((1 + ADDED_MASS) / (1 + load(shape)));
    }

    private static double load(Membrane.Shape shape) {
        return ADDED_MASS * StrictMath.pow(ZERO_11 / shape.zero(), FALL);
    }
}
