package org.kitweft.groove;

import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * The time that strokes are laid on: the meter, how many steps a beat has, swing, and what happens
 * where the sticking does not fill the bar.
 *
 * @param meter the meter
 * @param stepsPerBeat 1 to 8, or 12
 * @param swing where the second of a pair of steps falls, in percent of the pair: {@value
 *     #STRAIGHT} straight, 67 about a triplet, to {@value #MOST_SWING}. Only steps in pairs swing:
 *     with 1, 3, 5, 6, 7 or 12 steps a beat it changes nothing.
 * @param overTheBar whether the sticking runs over the bar line until both meet again; else it
 *     starts again with the bar
 */
public record Grid(Meter meter, int stepsPerBeat, int swing, boolean overTheBar) {
    /** No swing: both steps of a pair last the same. */
    public static final int STRAIGHT = 50;

    /** The strongest swing, a dotted note and its rest. */
    public static final int MOST_SWING = 75;

    private static final Set<Integer> STEPS = Set.of(1, 2, 3, 4, 5, 6, 7, 8, 12);
    private static final Set<Integer> STEPS_IN_PAIRS = Set.of(2, 4, 8);

    /** Sixteenths in 4/4, straight, starting again with each bar. */
    public static final Grid SIXTEENTHS = new Grid(Meter.COMMON, 4, STRAIGHT, false);

    public Grid {
        Objects.requireNonNull(meter, "meter");
        checkStepsPerBeat(stepsPerBeat);
        if (swing < STRAIGHT || swing > MOST_SWING) {
            throw new IllegalArgumentException(
                    "swing %d: expected %d (straight) to %d percent"
                            .formatted(swing, STRAIGHT, MOST_SWING));
        }
    }

    static void checkStepsPerBeat(int stepsPerBeat) {
        if (!STEPS.contains(stepsPerBeat)) {
            throw new IllegalArgumentException(
                    "%d steps per beat: expected 1 to 8 or 12".formatted(stepsPerBeat));
        }
    }

    /** The step counts that a beat can have, ascending. */
    public static Set<Integer> stepsPerBeatChoices() {
        return new TreeSet<>(STEPS);
    }

    /** The same grid in another meter. */
    public Grid withMeter(Meter other) {
        return new Grid(other, stepsPerBeat, swing, overTheBar);
    }

    /** The same grid with other steps per beat. */
    public Grid withStepsPerBeat(int other) {
        return new Grid(meter, other, swing, overTheBar);
    }

    /** The same grid with another swing. */
    public Grid withSwing(int other) {
        return new Grid(meter, stepsPerBeat, other, overTheBar);
    }

    /** The same grid, running over the bar line or not. */
    public Grid withOverTheBar(boolean other) {
        return new Grid(meter, stepsPerBeat, swing, other);
    }

    /** Ticks of a step. */
    public long stepTicks() {
        return meter.beatTicks() / stepsPerBeat;
    }

    /** Steps of a bar. */
    public int stepsPerBar() {
        return meter.beats() * stepsPerBeat;
    }

    /** Whether its steps stand in pairs, which alone can swing. */
    public boolean hasPairs() {
        return STEPS_IN_PAIRS.contains(stepsPerBeat);
    }

    /**
     * Where something written at a tick sounds, swing considered: inside each pair of steps the
     * first half is stretched and the second shortened.
     *
     * @param written ticks from the start of the groove on the straight grid
     * @param steps the steps per beat of what is written there; odd divisions do not swing
     */
    public long sounding(long written, int steps) {
        if (swing == STRAIGHT || !hasPairs() || !STEPS_IN_PAIRS.contains(steps)) {
            return written;
        }
        long half = stepTicks();
        long pair = 2 * half;
        long turn = pair * swing / 100;
        long inPair = written % pair;
        long bent =
                inPair <= half
                        ? Math.round((double) inPair * turn / half)
                        : turn + Math.round((double) (inPair - half) * (pair - turn) / half);
        return written - inPair + bent;
    }
}
