package org.kitweft.explore.search;

import java.util.OptionalInt;
import org.kitweft.pattern.Sticking;

/**
 * How far {@link StickingSearch} looks.
 *
 * @param strokes the length of the stickings, rests counted; empty: as many as the groove has steps
 * @param mostAdditions 0 to {@value #MOST}: the most handovers, doublings, layers and the like, a
 *     unison of B not counted
 */
public record SearchSpace(OptionalInt strokes, int mostAdditions) {
    /** The most additions that can be asked for. */
    public static final int MOST = 3;

    /** Stickings as long as the groove, up to {@value #MOST} additions. */
    public static final SearchSpace WHOLE = new SearchSpace(OptionalInt.empty(), MOST);

    public SearchSpace {
        if (mostAdditions < 0 || mostAdditions > MOST) {
            throw new IllegalArgumentException(
                    "%d additions: expected 0 to %d".formatted(mostAdditions, MOST));
        }
        if (strokes.isPresent()
                && (strokes.getAsInt() < 1 || strokes.getAsInt() > Sticking.MAX_STROKES)) {
            throw new IllegalArgumentException(
                    "a sticking has 1 to %d strokes, not %d"
                            .formatted(Sticking.MAX_STROKES, strokes.getAsInt()));
        }
    }

    /** The same with stickings of so many strokes. */
    public SearchSpace withStrokes(int other) {
        return new SearchSpace(OptionalInt.of(other), mostAdditions);
    }

    /** The same with at most so many additions. */
    public SearchSpace withMostAdditions(int other) {
        return new SearchSpace(strokes, other);
    }
}
