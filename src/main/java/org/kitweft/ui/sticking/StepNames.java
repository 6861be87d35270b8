package org.kitweft.ui.sticking;

import java.util.Map;
import org.kitweft.groove.Meter;

/** What musicians call the steps of a beat. Common practice, no source. */
final class StepNames {
    private static final Map<Integer, String> OF_A_QUARTER =
            Map.of(
                    1, "quarters",
                    2, "eighths",
                    3, "triplets",
                    4, "sixteenths",
                    5, "quintuplets",
                    6, "sextuplets",
                    7, "septuplets",
                    8, "thirty-seconds");
    private static final Map<Integer, String> OF_A_DOTTED_QUARTER =
            Map.of(
                    1, "dotted quarters",
                    2, "duplets",
                    3, "eighths",
                    4, "quadruplets",
                    5, "quintuplets",
                    6, "sixteenths",
                    7, "septuplets",
                    12, "thirty-seconds");
    private static final Map<Integer, String> OF_AN_EIGHTH =
            Map.of(1, "eighths", 2, "sixteenths", 3, "triplets", 4, "thirty-seconds");

    private StepNames() {}

    /** The name of so many steps to the beat of a meter. */
    static String of(Meter meter, int stepsPerBeat) {
        Map<Integer, String> names =
                meter.isCompound()
                        ? OF_A_DOTTED_QUARTER
                        : meter.unit() == 8 ? OF_AN_EIGHTH : OF_A_QUARTER;
        return names.getOrDefault(stepsPerBeat, stepsPerBeat + " to the beat");
    }
}
