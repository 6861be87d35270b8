package org.kitweft.groove;

import org.apache.commons.numbers.core.ArithmeticUtils;
import org.apache.commons.numbers.fraction.Fraction;

/**
 * The unit of musical time: whole numbers, so that nothing ever drifts.
 *
 * <p>A quarter note has {@value #PER_QUARTER} ticks. All steps come out whole: a quarter, an eighth
 * and a dotted quarter each divide by 1 to 8 and 12, and a pair of binary steps divides by 100, so
 * that a swung step lies on a whole tick for every whole percentage.
 */
public final class Ticks {
    /** Ticks of a quarter note: 2<sup>5</sup>·3·5<sup>2</sup>·7. */
    public static final int PER_QUARTER = 16_800;

    private Ticks() {}

    /** Ticks as an exact fraction of quarter notes. */
    public static Fraction quarters(long ticks) {
        long gcd = ArithmeticUtils.gcd(ticks, PER_QUARTER);
        return ticks == 0
                ? Fraction.ZERO
                : Fraction.of(Math.toIntExact(ticks / gcd), Math.toIntExact(PER_QUARTER / gcd));
    }

    /** Ticks as text in quarter notes: {@code 0}, {@code 5/4}, {@code 3}. */
    public static String text(long ticks) {
        Fraction quarters = quarters(ticks);
        return quarters.getDenominator() == 1
                ? Integer.toString(quarters.getNumerator())
                : quarters.getNumerator() + "/" + quarters.getDenominator();
    }
}
