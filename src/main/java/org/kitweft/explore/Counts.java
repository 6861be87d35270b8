package org.kitweft.explore;

import java.math.BigInteger;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/**
 * How many ways there are to play a sticking, or any of its length, on the sounds chosen; no rule
 * is asked. Exact at any size. {@link CountName} says what each number means.
 *
 * <p>A letter with choices that does not occur in the sticking counts among the letters that any
 * sticking may use; it is no part of {@code onePlacePerLetter}. A sticking of rests alone has no
 * strokes, and one way to play them.
 *
 * @param strokes the strokes counted, n: rests are none
 * @param stickings see {@link CountName#STICKINGS}
 * @param onePlacePerLetter see {@link CountName#ONE_PLACE_PER_LETTER}
 * @param placePerStroke see {@link CountName#PLACE_PER_STROKE}
 * @param anySticking see {@link CountName#ANY_STICKING}
 * @param anyStickingDifferentSound see {@link CountName#ANY_STICKING_DIFFERENT_SOUND}
 * @param anyStickingUpToStart see {@link CountName#ANY_STICKING_UP_TO_START}
 * @param differentSoundUpToStart see {@link CountName#DIFFERENT_SOUND_UP_TO_START}
 */
public record Counts(
        int strokes,
        BigInteger stickings,
        BigInteger onePlacePerLetter,
        BigInteger placePerStroke,
        BigInteger anySticking,
        BigInteger anyStickingDifferentSound,
        BigInteger anyStickingUpToStart,
        BigInteger differentSoundUpToStart) {

    /**
     * Counts.
     *
     * @throws IllegalArgumentException naming a letter of the sticking that has no choices
     */
    public static Counts of(Sticking sticking, Choices choices) {
        choices.require(sticking.letters());
        int n = sticking.struckCount();
        long pairs = choices.letters().stream().mapToLong(v -> choices.of(v).size()).sum();
        int sounds = choices.union().size();
        BigInteger onePlacePerLetter = BigInteger.ONE;
        for (Letter letter : sticking.letters()) {
            onePlacePerLetter = onePlacePerLetter.multiply(size(choices, letter));
        }
        BigInteger placePerStroke = BigInteger.ONE;
        for (Stroke.Struck stroke : sticking.struck()) {
            placePerStroke = placePerStroke.multiply(size(choices, stroke.letter()));
        }
        return new Counts(
                n,
                BigInteger.valueOf(choices.letters().size()).pow(n),
                onePlacePerLetter,
                placePerStroke,
                BigInteger.valueOf(pairs).pow(n),
                BigInteger.valueOf(sounds).pow(n),
                Necklaces.count(n, pairs),
                Necklaces.count(n, sounds));
    }

    private static BigInteger size(Choices choices, Letter letter) {
        return BigInteger.valueOf(choices.of(letter).size());
    }

    /** All counts by name, in the order of the names; {@link CountName#UNDER_RULES} is not one. */
    public Map<CountName, BigInteger> byName() {
        Map<CountName, BigInteger> all = new EnumMap<>(CountName.class);
        all.put(CountName.STICKINGS, stickings);
        all.put(CountName.ONE_PLACE_PER_LETTER, onePlacePerLetter);
        all.put(CountName.PLACE_PER_STROKE, placePerStroke);
        all.put(CountName.ANY_STICKING, anySticking);
        all.put(CountName.ANY_STICKING_DIFFERENT_SOUND, anyStickingDifferentSound);
        all.put(CountName.ANY_STICKING_UP_TO_START, anyStickingUpToStart);
        all.put(CountName.DIFFERENT_SOUND_UP_TO_START, differentSoundUpToStart);
        return Collections.unmodifiableMap(all);
    }
}
