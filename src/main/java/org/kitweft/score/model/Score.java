package org.kitweft.score.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.Kit;

/**
 * A phrase as it is written: measures on one staff. Immutable; made by {@link Notation}.
 *
 * @param kit whose sounds it writes
 * @param clef of its staff
 * @param tempo over its first measure; empty: not written
 * @param measures in order, at least one
 * @param legend what its noteheads mean, from high to low; empty on a pitched kit, whose places are
 *     keys
 */
public record Score(
        Kit kit,
        Clef clef,
        Optional<Tempo> tempo,
        List<Measure> measures,
        List<LegendEntry> legend) {
    public Score {
        Objects.requireNonNull(kit, "kit");
        Objects.requireNonNull(clef, "clef");
        Objects.requireNonNull(tempo, "tempo");
        measures = List.copyOf(measures);
        legend = List.copyOf(legend);
        if (measures.isEmpty()) {
            throw new IllegalArgumentException("a score has at least one measure");
        }
    }

    /**
     * The measure that is played at a tick of the phrase, repeats considered.
     *
     * @param tick from the start of the phrase
     * @return index of the measure, and where the tick lies in it; the last instant of the last bar
     *     for ticks beyond the end
     */
    public At at(long tick) {
        int last = measures.size() - 1;
        int index = last;
        while (index > 0 && measures.get(index).start() > tick) {
            index--;
        }
        Measure measure = measures.get(index);
        long inMeasure = Math.max(0, tick - measure.start());
        if (inMeasure >= measure.meter().barTicks() && measure.closesRepeat()) {
            int first = index;
            while (first > 0 && !measures.get(first).opensRepeat()) {
                first--;
            }
            long round = measure.start() + measure.meter().barTicks() - measures.get(first).start();
            long inRound = (tick - measures.get(first).start()) % round;
            index = first + (int) (inRound / measure.meter().barTicks());
            inMeasure = inRound % measure.meter().barTicks();
        }
        return new At(index, Math.min(inMeasure, measure.meter().barTicks()));
    }

    /**
     * An instant in a measure.
     *
     * @param measure index of the measure, from 0
     * @param tick from its start
     */
    public record At(int measure, long tick) {}
}
