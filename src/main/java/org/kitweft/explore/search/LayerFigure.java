package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Layer;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;

/** Writes all strikes on a sound as a layer: on the fewest steps, then the shortest figure. */
final class LayerFigure {
    private LayerFigure() {}

    static Layer of(Target target, Limb limb, SoundName sound) {
        List<Optional<Dynamic>> line = line(target, sound);
        int perBeat = target.grid().stepsPerBeat();
        for (int steps : Grid.stepsPerBeatChoices()) {
            if (perBeat % steps == 0 && liesOn(line, perBeat / steps)) {
                List<Optional<Dynamic>> coarse = every(line, perBeat / steps);
                return new Layer(limb, sound, steps, new Figure(coarse.subList(0, period(coarse))));
            }
        }
        throw new IllegalStateException("the grid's own steps always hold its line");
    }

    /** Steps of the shortest figure on the target's own steps. */
    static int period(Target target, SoundName sound) {
        return period(line(target, sound));
    }

    private static List<Optional<Dynamic>> line(Target target, SoundName sound) {
        List<Optional<Dynamic>> line = new ArrayList<>();
        for (List<Strike> step : target.steps()) {
            line.add(
                    step.stream()
                            .filter(strike -> strike.sound().equals(sound))
                            .map(Strike::dynamic)
                            .findFirst());
        }
        return line;
    }

    private static boolean liesOn(List<Optional<Dynamic>> line, int stride) {
        for (int step = 0; step < line.size(); step++) {
            if (step % stride != 0 && line.get(step).isPresent()) {
                return false;
            }
        }
        return true;
    }

    private static List<Optional<Dynamic>> every(List<Optional<Dynamic>> line, int stride) {
        List<Optional<Dynamic>> coarse = new ArrayList<>();
        for (int step = 0; step < line.size(); step += stride) {
            coarse.add(line.get(step));
        }
        return coarse;
    }

    private static int period(List<Optional<Dynamic>> line) {
        for (int period = 1; period < line.size(); period++) {
            if (line.subList(period, line.size()).equals(line.subList(0, line.size() - period))) {
                return period;
            }
        }
        return line.size();
    }
}
