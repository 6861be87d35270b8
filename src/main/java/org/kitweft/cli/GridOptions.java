package org.kitweft.cli;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import picocli.CommandLine.Option;

/** The time that strokes are laid on. */
final class GridOptions {
    @Option(
            names = "--meter",
            paramLabel = "N/4|N/8",
            defaultValue = "4/4",
            description =
                    "The meter, 1 to 32 over 4 or 8. In 3/8, 6/8, 9/8 and 12/8 the beat is a dotted quarter. Default: ${DEFAULT-VALUE}.")
    private String meter = "4/4";

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "4",
            description =
                    "Steps a beat, 1 to 8 or 12; each stroke lasts one step. Default: ${DEFAULT-VALUE}, sixteenths where the beat is a quarter.")
    private int steps = 4;

    @Option(
            names = "--swing",
            paramLabel = "PERCENT",
            defaultValue = "50",
            description =
                    "Where the second step of each pair falls, 50 (straight) to 75 percent; 67 is about a triplet. Default: ${DEFAULT-VALUE}.")
    private int swing = Grid.STRAIGHT;

    @Option(
            names = "--resolve",
            description =
                    "Let the sticking run over the bar line until both meet again, instead of starting again with each bar.")
    private boolean resolve;

    @Option(
            names = "--bars",
            paramLabel = "N",
            description =
                    "How many bars, 1 to 512. Default: until sticking and layers come round together.")
    private @Nullable Integer bars;

    Grid grid() {
        return new Grid(Meter.parse(meter), steps, swing, resolve);
    }

    OptionalInt bars() {
        return bars == null ? OptionalInt.empty() : OptionalInt.of(bars);
    }
}
