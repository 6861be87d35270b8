package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.kitweft.pattern.Letter;

/**
 * Who plays what in an answer, all but the sticking and the paths.
 *
 * @param layering the layers
 * @param letters the plans of R, L, K and H, in this order
 * @param both what B is
 */
record Plan(Layering layering, List<LetterPlan> letters, Both both) {

    /** What B is. */
    enum Both {
        /** R and L at once, and in some pass on two sounds: the strokes of one are not B. */
        TWO_SOUNDS(List.of()),
        /** R and L at once, on one sound too. */
        UNISON(List.of(new Addition.Unison())),
        /** Both hands on sounds of its own, at each stroke on one. */
        OWN_SOUNDS(List.of(new Addition.BothHands()));

        // Neither list can be changed.
        @SuppressWarnings("ImmutableEnumChecker")
        private final List<Addition> additions;

        Both(List<Addition> additions) {
            this.additions = additions;
        }

        List<Addition> additions() {
            return additions;
        }
    }

    LetterPlan of(Letter letter) {
        return letters.get(letter.ordinal());
    }

    /** All additions: layers, then the letters' in their order. */
    List<Addition> additions() {
        List<Addition> all = new ArrayList<>(layering.layers());
        letters.forEach(letter -> all.addAll(letter.additions()));
        all.addAll(both.additions);
        return List.copyOf(all);
    }

    /** The strokes that a letter can be. */
    BitSet strokesOf(Letter letter) {
        if (letter != Letter.B) {
            return layering.alone(of(letter));
        }
        return both == Both.OWN_SOUNDS
                ? layering.bothHands()
                : layering.atOnce(of(Letter.R), of(Letter.L), both == Both.UNISON);
    }
}
