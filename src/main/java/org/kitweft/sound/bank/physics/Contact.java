package org.kitweft.sound.bank.physics;

/**
 * The time a stick, beater, mallet or hand rests on what it strikes. The force is taken as half a
 * sine: a long contact drives only low modes, a short one high ones too. Harder strokes are
 * shorter, so they are brighter.
 *
 * <p>Sources: Fletcher and Rossing ch. 18 to 20 for contact times (sticks on heads 1 to 6 ms, hard
 * mallets on bars below 1 ms); Chaigne and Doutaut, <i>J. Acoust. Soc. Am.</i> 101 (1997) 539, for
 * the power law of the contact force. With force ~ indentation<sup>p</sup> the time goes with
 * speed<sup>(1-p)/(1+p)</sup>: &minus;0.2 for p = 1.5 (two hard bodies, Hertz), &minus;0.5 for p =
 * 3 (felt).
 *
 * @param seconds contact at the hardest stroke, above 0
 * @param exponent power of the speed by which contact grows as strokes get softer, 0 to 1
 */
public record Contact(double seconds, double exponent) {
    public Contact {
        if (!(seconds > 0) || exponent < 0 || exponent > 1) {
            throw new IllegalArgumentException(
                    "a contact lasts more than 0 s with exponent 0 to 1, not %s s, %s"
                            .formatted(seconds, exponent));
        }
    }

    /** A contact given in milliseconds. */
    public static Contact ofMillis(double millis, double exponent) {
        return new Contact(millis / 1000, exponent);
    }

    /** How long a stroke of {@code strength} (above 0, hardest 1) touches, in seconds. */
    public double lasting(double strength) {
        return seconds * StrictMath.pow(strength, -exponent);
    }

    /**
     * How much of frequency {@code hertz} a stroke of {@code strength} holds, 1 at 0 Hz: the
     * spectrum of half a sine, cos(&pi;f&tau;) / (1 &minus; (2f&tau;)&sup2;), in its main part.
     * Beyond f&tau; = 1 its zeros are bridged by their envelope, which meets it there: no real
     * contact is a perfect half sine.
     */
    public double spectrum(double hertz, double strength) {
        double x = hertz * lasting(strength);
        if (x > 1) {
            return 1 / (4 * x * x - 1);
        }
        double nearPole = 1 - 4 * x * x;
        return Math.abs(nearPole) < 1e-6 ? Math.PI / 4 : StrictMath.cos(Math.PI * x) / nearPole;
    }
}
