package org.kitweft.groove;

import java.util.List;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * After how many bars a sticking, and everything beside it, comes round.
 *
 * @param stickingBars bars after which the sticking starts on a bar line again
 * @param allBars bars after which sticking and layers do
 */
record Cycle(int stickingBars, long allBars) {

    static Cycle of(int strokes, Grid grid, List<Layer> layers) {
        int barSteps = grid.stepsPerBar();
        int stickingBars =
                grid.overTheBar()
                        ? ArithmeticUtils.lcm(strokes, barSteps) / barSteps
                        : (strokes + barSteps - 1) / barSteps;
        long barTicks = grid.meter().barTicks();
        long all = stickingBars;
        for (Layer layer : layers) {
            long layerTicks =
                    grid.meter().beatTicks() / layer.stepsPerBeat() * layer.figure().steps().size();
            all = ArithmeticUtils.lcm(all, ArithmeticUtils.lcm(layerTicks, barTicks) / barTicks);
        }
        return new Cycle(stickingBars, all);
    }
}
