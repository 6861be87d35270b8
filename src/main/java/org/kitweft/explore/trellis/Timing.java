package org.kitweft.explore.trellis;

import org.kitweft.groove.Grid;
import org.kitweft.groove.Recipe;

/**
 * How long lies between two strokes of a sticking on its grid.
 *
 * <p>Where the sticking runs over the bar line, or is no longer than a bar, it follows itself at
 * once; a longer one starts again at the next bar line. If the period has an odd number of steps
 * and comes round, a swung sticking falls on long and short steps by turns: the shorter time
 * counts.
 */
final class Timing {
    private final Grid grid;
    private final int period;
    private final boolean bothPhases;

    Timing(Recipe recipe, boolean loop) {
        grid = recipe.grid();
        int size = recipe.sticking().size();
        int bar = grid.stepsPerBar();
        period = grid.overTheBar() || size <= bar ? size : (size + bar - 1) / bar * bar;
        bothPhases = loop && period % 2 == 1;
    }

    /** Steps from one start of the sticking to the next. */
    int period() {
        return period;
    }

    /** Ticks from one step to a later one; steps from the period on lie in the next pass. */
    long ticks(int from, int to) {
        long ticks = sounding(to) - sounding(from);
        return bothPhases ? Math.min(ticks, sounding(to + 1) - sounding(from + 1)) : ticks;
    }

    /** When a step sounds, in ticks. */
    long sounding(int step) {
        return grid.sounding(step * grid.stepTicks(), grid.stepsPerBeat());
    }
}
