package org.kitweft.ui.sticking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kitweft.pattern.Catalogue;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.StickingFamily;
import org.kitweft.pattern.StickingTraits;

/**
 * What a teacher asks of the catalogue. Immutable.
 *
 * @param strokes the length
 * @param start the letters it starts with, perhaps none
 * @param longestRun the most strokes of one hand in a row; 0: any
 * @param family what it is made of; empty: anything
 * @param leadChanges whether the lead has to change over on repeat
 * @param oneOfEachCycle whether only one of those that are the same cycle is wanted
 * @param sameSwapped whether it has to be the same cycle after swapping hands
 */
record StickingFilter(
        int strokes,
        List<Letter> start,
        int longestRun,
        Optional<StickingFamily> family,
        boolean leadChanges,
        boolean oneOfEachCycle,
        boolean sameSwapped) {
    StickingFilter {
        start = List.copyOf(start);
    }

    /**
     * The letters of a typed start; other characters than R and L are refused.
     *
     * @throws IllegalArgumentException naming the character
     */
    static List<Letter> start(String text) {
        List<Letter> letters = new ArrayList<>();
        for (char character : text.strip().toCharArray()) {
            letters.add(
                    Letter.of(character)
                            .filter(Letter::isOneHand)
                            .orElseThrow(
                                    () ->
                                            new IllegalArgumentException(
                                                    "starts with \"%s\": expected R and L only"
                                                            .formatted(text))));
        }
        return letters;
    }

    /** All that answer to it, lazily. */
    Stream<Sticking> matches() {
        return new Catalogue(strokes).startingWith(start).filter(this::accepts);
    }

    private boolean accepts(Sticking sticking) {
        return (longestRun == 0 || StickingTraits.longestRunOnRepeat(sticking) <= longestRun)
                && family.map(f -> StickingTraits.family(sticking) == f).orElse(true)
                && (!leadChanges || StickingTraits.leadChangesOnRepeat(sticking))
                && (!sameSwapped || StickingTraits.sameAfterSwappingHands(sticking))
                && (!oneOfEachCycle || StickingTraits.firstOfItsCycle(sticking));
    }
}
