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
    /** Frequency times contact at which half a sine first holds nothing. */
    private static final double FIRST_ZERO = 1.5;

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
     * spectrum of half a sine, |cos(&pi;f&tau;) / (1 &minus; (2f&tau;)&sup2;)|.
     */
    public double spectrum(double hertz, double strength) {
        double x = hertz * lasting(strength);
        double nearPole = 1 - 4 * x * x;
        if (Math.abs(nearPole) < 1e-6) {
            return Math.PI / 4;
        }
        // No real contact is a perfect half sine: its zeros are filled to a third of the envelope.
        double envelope = x > FIRST_ZERO - 0.3 ? 1 / Math.abs(nearPole) : 0;
        return Math.max(Math.abs(StrictMath.cos(Math.PI * x) / nearPole), envelope / 3);
    }
}
