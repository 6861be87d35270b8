package org.kitweft.cli;

import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;

/** A groove in one line of words: meter, steps, tempo, bars, kit. */
final class GrooveHeading {
    private GrooveHeading() {}

    static String of(Groove groove, Tempo tempo, Symbols symbols) {
        Grid grid = groove.grid();
        String line =
                String.join(
                        symbols.between(),
                        grid.meter().text(),
                        steps(grid),
                        beat(grid.meter(), symbols) + " = " + tempo.beatsPerMinute(),
                        groove.bars() == 1 ? "1 bar" : groove.bars() + " bars",
                        groove.kit().toString());
        if (grid.swing() != Grid.STRAIGHT && grid.canSwing()) {
            line += symbols.between() + "swing " + grid.swing() + " %";
        }
        return grid.overTheBar() ? line + symbols.between() + "over the bar" : line;
    }

    /** The note that the tempo counts. */
    private static String beat(Meter meter, Symbols symbols) {
        if (meter.isCompound()) {
            return symbols.dottedQuarter();
        }
        return meter.unit() == 4 ? symbols.quarter() : symbols.eighth();
    }

    /** The steps by the name of their notes. */
    static String steps(Grid grid) {
        Meter meter = grid.meter();
        int steps = grid.stepsPerBeat();
        String name =
                meter.isCompound()
                        ? switch (steps) {
                            case 3 -> "eighths";
                            case 6 -> "sixteenths";
                            case 12 -> "thirty-seconds";
                            default -> "";
                        }
                        : switch (meter.unit() == 4 ? steps : 2 * steps) {
                            case 1 -> "quarters";
                            case 2 -> "eighths";
                            case 3 -> "triplets";
                            case 4 -> "sixteenths";
                            case 5 -> "quintuplets";
                            case 6 -> meter.unit() == 4 ? "sextuplets" : "";
                            case 7 -> "septuplets";
                            case 8 -> "thirty-seconds";
                            default -> "";
                        };
        return name.isEmpty() ? steps + " steps a beat" : name;
    }
}
