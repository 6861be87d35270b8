package org.kitweft.band;

import java.util.Objects;
import org.kitweft.pattern.Dynamic;

/**
 * One step of a band figure.
 *
 * @param kind whether something is struck, held on or silent
 * @param voice what is struck, as the figure's text names it; empty where nothing is
 * @param dynamic how loud
 * @param early whether it belongs to the chord of the next beat: an anticipation
 * @param clipped whether it is short
 */
record FigureStep(Kind kind, String voice, Dynamic dynamic, boolean early, boolean clipped) {

    enum Kind {
        NOTE,
        HOLD,
        REST
    }

    static final FigureStep HOLD = new FigureStep(Kind.HOLD, "", Dynamic.PLAIN, false, false);
    static final FigureStep REST = new FigureStep(Kind.REST, "", Dynamic.PLAIN, false, false);

    FigureStep {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(voice, "voice");
        Objects.requireNonNull(dynamic, "dynamic");
    }

    static FigureStep note(String voice, Dynamic dynamic) {
        return new FigureStep(Kind.NOTE, voice, dynamic, false, false);
    }

    boolean isNote() {
        return kind == Kind.NOTE;
    }
}
