package org.kitweft.score.engrave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.kitweft.groove.Ticks;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Score;

/**
 * Engraves scores: spaces the notes, breaks lines at bars, places every sign. Immutable and safe to
 * share between threads.
 */
public final class Engraver {
    private final Fonts fonts;

    /** Engraves with these fonts. */
    public Engraver(Fonts fonts) {
        this.fonts = Objects.requireNonNull(fonts, "fonts");
    }

    /** The fonts it engraves with. */
    public Fonts fonts() {
        return fonts;
    }

    /**
     * Places all signs of a score.
     *
     * @throws TooDenseException if a bar does not fit the width
     */
    public EngravedScore engrave(Score score, EngraveSettings settings) {
        long shortest = shortest(score);
        List<MeasureShape> shapes = new ArrayList<>();
        for (Measure measure : score.measures()) {
            shapes.add(new MeasureShape(fonts, measure, score.clef(), shortest));
        }
        Prelude prelude = new Prelude(fonts.music(), score);
        int count = shapes.size();
        double[] wanted = new double[count];
        double[] needed = new double[count];
        for (int i = 0; i < count; i++) {
            MeasureShape shape = shapes.get(i);
            double fixed = shape.leadIn() + prelude.withinLine(i) + prelude.atEnd(i);
            wanted[i] = fixed + Arrays.stream(shape.gaps(1)).sum();
            needed[i] = fixed + Arrays.stream(shape.gaps(0)).sum();
            double alone = needed[i] + prelude.atLineStart(i);
            if (alone > settings.width()) {
                throw new TooDenseException(shape.measure().number(), alone, settings.width());
            }
        }
        List<Integer> starts =
                new LineBreaker(settings.width()).lines(wanted, needed, prelude::atLineStart);
        List<EngravedSystem> systems = new ArrayList<>();
        for (int line = 0; line < starts.size(); line++) {
            int from = starts.get(line);
            int to = line + 1 < starts.size() ? starts.get(line + 1) : count;
            systems.add(
                    new SystemEngraver(fonts, score, settings, prelude, shapes, from, to)
                            .engrave());
        }
        return new EngravedScore(score, systems);
    }

    /** The shortest note of the score, an eighth where all are longer: it sets the scale. */
    private static long shortest(Score score) {
        return score.measures().stream()
                .flatMap(m -> m.voices().stream())
                .flatMap(v -> v.events().stream())
                .filter(Chord.class::isInstance)
                .mapToLong(Event::ticks)
                .min()
                .stream()
                .map(ticks -> Math.min(ticks, Ticks.PER_QUARTER / 2))
                .findFirst()
                .orElse(Ticks.PER_QUARTER / 2);
    }
}
