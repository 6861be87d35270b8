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
 * @param bothHands whether B has sounds of its own
 */
record Plan(Layering layering, List<LetterPlan> letters, boolean bothHands) {

    LetterPlan of(Letter letter) {
        return letters.get(letter.ordinal());
    }

    /** All additions: layers, then the letters' in their order. */
    List<Addition> additions() {
        List<Addition> all = new ArrayList<>(layering.layers());
        letters.forEach(letter -> all.addAll(letter.additions()));
        if (bothHands) {
            all.add(new Addition.BothHands());
        }
        return List.copyOf(all);
    }

    /** The strokes that B can be. */
    BitSet both() {
        return bothHands ? layering.bothHands() : layering.atOnce(of(Letter.R), of(Letter.L));
    }

    /** The strokes that a letter can be. */
    BitSet strokesOf(Letter letter) {
        return letter == Letter.B ? both() : layering.alone(of(letter));
    }
}
