package org.kitweft.sound.live;

import java.util.List;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;

/**
 * What listeners are told at one instant of a phrase.
 *
 * @param tick where it is heard, from the start of the loop
 * @param written where it is written, likewise
 * @param place the step; its bar counts through the phrase
 * @param hits that sound there; may be none
 */
record Cue(long tick, long written, Place place, List<Hit> hits) {
    Cue {
        hits = List.copyOf(hits);
    }

    /** The same place with nothing struck. */
    Cue silent() {
        return new Cue(tick, written, place, List.of());
    }
}
