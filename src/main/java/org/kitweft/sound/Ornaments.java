package org.kitweft.sound;

import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Ticks;

/**
 * How far apart grace notes and bounces lie: a fixed time, as hands need it, but in fast steps no
 * more than a share of the step.
 *
 * <p>30 ms between a grace note and the next note, 28 ms between bounces: common practice, no
 * source. Both are rounded to whole 480ths of a quarter, so that a MIDI file needs no finer
 * resolution for them than for the hits.
 */
final class Ornaments {
    /** What spacings and lengths are whole multiples of, in ticks. */
    static final long UNIT = Ticks.PER_QUARTER / 480;

    /** Bounces of one stroke, the stroke included: a hand has no more in it. Our own choice. */
    static final int MOST_BOUNCES = 12;

    private static final double GRACE_SECONDS = 0.030;
    private static final double BOUNCE_SECONDS = 0.028;

    /** A drag's two grace notes fill half a step at most. */
    private static final int GRACE_SHARE = 4;

    private static final int BOUNCE_SHARE = 3;

    private Ornaments() {}

    /** Ticks from a grace note to the next note. */
    static long graceTicks(long stepTicks, Meter meter, Tempo tempo) {
        return spacing(GRACE_SECONDS, GRACE_SHARE, stepTicks, meter, tempo);
    }

    /** Ticks from bounce to bounce. */
    static long bounceTicks(long stepTicks, Meter meter, Tempo tempo) {
        return spacing(BOUNCE_SECONDS, BOUNCE_SHARE, stepTicks, meter, tempo);
    }

    /** The strokes of a buzz, the first included. */
    static int bounces(long stepTicks, Meter meter, Tempo tempo) {
        long fitting = (stepTicks - 1) / bounceTicks(stepTicks, meter, tempo) + 1;
        return (int) Math.min(fitting, MOST_BOUNCES);
    }

    /** The velocity of a bounce, counted from 0: half at once, then fading. */
    static int bounceVelocity(int velocity, int bounce) {
        return bounce == 0
                ? velocity
                : Math.max(1, (int) Math.round(velocity * 0.6 * Math.pow(0.92, bounce - 1)));
    }

    private static long spacing(
            double seconds, int share, long stepTicks, Meter meter, Tempo tempo) {
        double unitSeconds = tempo.seconds(UNIT, meter);
        long most = stepTicks / share / UNIT;
        return Math.max(1, Math.min(Math.round(seconds / unitSeconds), most)) * UNIT;
    }
}
