package org.kitweft.groove;

import java.util.List;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * After how many bars a sticking, and everything beside it, comes round.
 *
 * @param stickingBars bars after which the sticking starts on a bar line again
 * @param allBars bars after which sticking and layers do; {@link Long#MAX_VALUE} where that is
 *     beyond any number of 63 bits, as with many long layers of coprime lengths
 */
record Cycle(int stickingBars, long allBars) {

    /** The stroke of the sticking, from 0, that stands at a step of the groove, from 0. */
    int strokeAt(int step, int strokes, Grid grid) {
        return step % (stickingBars * grid.stepsPerBar()) % strokes;
    }

    static Cycle of(int strokes, Grid grid, List<Layer> layers) {
        int barSteps = grid.stepsPerBar();
        int stickingBars =
                grid.overTheBar()
                        ? ArithmeticUtils.lcm(strokes, barSteps) / barSteps
                        : (strokes + barSteps - 1) / barSteps;
        return new Cycle(stickingBars, allBars(stickingBars, grid, layers));
    }

    private static long allBars(int stickingBars, Grid grid, List<Layer> layers) {
        long barTicks = grid.meter().barTicks();
        long all = stickingBars;
        for (Layer layer : layers) {
            long layerTicks =
                    grid.meter().beatTicks() / layer.stepsPerBeat() * layer.figure().steps().size();
            long layerBars = ArithmeticUtils.lcm(layerTicks, barTicks) / barTicks;
            long factor = layerBars / ArithmeticUtils.gcd(all, layerBars);
            if (all > Long.MAX_VALUE / factor) {
                return Long.MAX_VALUE;
            }
            all *= factor;
        }
        return all;
    }
}
