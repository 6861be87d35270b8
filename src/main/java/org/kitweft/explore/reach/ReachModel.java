package org.kitweft.explore.reach;

import org.kitweft.groove.Meter;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Surface;

/**
 * How long a limb takes from one stroke to its next.
 *
 * <p>A move to another surface takes the time of Fitts's law in its Shannon form, MT = a + b
 * log<sub>2</sub>(A/W + 1), with the distance A between the centres in the horizontal plane and the
 * diameter W of the surface that is struck; but never less than a repeated stroke. A repeated
 * stroke on one surface takes the limit of its limb.
 *
 * <p>What it leaves out: height, rebound, the way round other surfaces, practice, tiredness, sticks
 * or brushes. Fitts's subjects tapped with a stylus for accuracy, over 5 to 40 cm. Show {@link
 * #CAVEAT} wherever one of its figures is shown.
 *
 * @param interceptMillis a, in milliseconds
 * @param millisPerBit b, in milliseconds per bit
 * @param handRepeatMillis the least time between two strokes of one hand
 * @param footRepeatMillis the least time between two strokes of one foot
 */
public record ReachModel(
        double interceptMillis,
        double millisPerBit,
        double handRepeatMillis,
        double footRepeatMillis) {

    /** What a user reads beside the figures. */
    public static final String CAVEAT =
            "An estimate from published tapping data, not a verdict on a person.";

    /**
     * The constants in use. Line: least squares over the 16 conditions of P. M. Fitts, "The
     * information capacity of the human motor system in controlling the amplitude of movement",
     * Journal of Experimental Psychology 47 (1954), table 1, 1-oz stylus, nominal width; a test
     * repeats the regression. Repeated strokes: one hand plays sixteenths up to 150 beats a minute
     * (100 ms), one foot up to 100 (150 ms): common practice, no source.
     */
    public static final ReachModel PUBLISHED = new ReachModel(27.69, 111.54, 100, 150);

    private static final double MILLIS_PER_MINUTE = 60_000;

    public ReachModel {
        check("intercept", interceptMillis);
        check("time per bit", millisPerBit);
        check("repeat of a hand", handRepeatMillis);
        check("repeat of a foot", footRepeatMillis);
    }

    private static void check(String what, double millis) {
        if (!(millis >= 0) || Double.isInfinite(millis)) {
            throw new IllegalArgumentException(
                    "%s %s ms: expected a number of 0 or more".formatted(what, millis));
        }
    }

    /** The index of difficulty of a move in bits: log<sub>2</sub>(A/W + 1). */
    public static double bits(double distance, double width) {
        return Math.log(distance / width + 1) / Math.log(2);
    }

    /** The least time from a stroke on one surface to the limb's next on another or the same. */
    public double millis(Limb limb, Surface from, Surface to) {
        double repeat = limb.isHand() ? handRepeatMillis : footRepeatMillis;
        if (from.id().equals(to.id())) {
            return repeat;
        }
        double move = interceptMillis + millisPerBit * bits(from.distanceTo(to), to.diameter());
        return Math.max(repeat, move);
    }

    /**
     * The highest tempo at which a limb gets from one surface to the next in so many ticks: beats
     * of the meter in a minute, 0 where there is no time at all.
     */
    public double ceiling(Limb limb, Surface from, Surface to, long ticks, Meter meter) {
        double millis = millis(limb, from, to);
        return millis == 0
                ? Double.POSITIVE_INFINITY
                : ticks * MILLIS_PER_MINUTE / (millis * meter.beatTicks());
    }
}
