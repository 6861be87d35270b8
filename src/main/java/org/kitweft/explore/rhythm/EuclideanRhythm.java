package org.kitweft.explore.rhythm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/**
 * Strokes spread as evenly as whole steps allow.
 *
 * <p>Bjorklund's algorithm as told in G. Toussaint, "The Euclidean algorithm generates traditional
 * musical rhythms", BRIDGES 2005, with its starting point: the first step is struck. The remainder
 * is dealt out until one sequence of it, or none, is left.
 */
public final class EuclideanRhythm {
    private EuclideanRhythm() {}

    /**
     * So many strokes in so many steps.
     *
     * @param strokes 0 to {@code steps}
     * @param steps at least 1
     */
    public static Rhythm of(int strokes, int steps) {
        if (steps < 1 || strokes < 0 || strokes > steps) {
            throw new IllegalArgumentException(
                    "%d strokes in %d steps: expected at least 1 step and no more strokes than steps"
                            .formatted(strokes, steps));
        }
        if (strokes == 0) {
            return new Rhythm(steps, new TreeSet<>());
        }
        List<List<Boolean>> heads = new ArrayList<>(Collections.nCopies(strokes, List.of(true)));
        List<List<Boolean>> tails =
                new ArrayList<>(Collections.nCopies(steps - strokes, List.of(false)));
        boolean dealt = false;
        while (tails.size() > 1 || (!dealt && tails.size() == 1)) {
            int pairs = Math.min(heads.size(), tails.size());
            List<List<Boolean>> joined = new ArrayList<>();
            for (int i = 0; i < pairs; i++) {
                List<Boolean> pair = new ArrayList<>(heads.get(i));
                pair.addAll(tails.get(i));
                joined.add(pair);
            }
            tails =
                    new ArrayList<>(
                            heads.size() > pairs
                                    ? heads.subList(pairs, heads.size())
                                    : tails.subList(pairs, tails.size()));
            heads = joined;
            dealt = true;
        }
        StringBuilder text = new StringBuilder();
        heads.forEach(part -> part.forEach(struck -> text.append(struck ? 'x' : '.')));
        tails.forEach(part -> part.forEach(struck -> text.append(struck ? 'x' : '.')));
        return Rhythm.of(text.toString());
    }
}
