package org.kitweft.band;

import java.util.Locale;

/**
 * The name of a tone without its octave: a letter and its sharps or flats. E flat and D sharp are
 * two names of one key.
 *
 * @param letter A to G
 * @param alteration sharps above 0, flats below, -4 to 4
 */
public record PitchName(char letter, int alteration) {
    private static final String LETTERS = "CDEFGAB";
    private static final int[] SEMITONES = {0, 2, 4, 5, 7, 9, 11};
    private static final int MOST_ALTERED = 4;

    public PitchName {
        if (LETTERS.indexOf(letter) < 0 || Math.abs(alteration) > MOST_ALTERED) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "a tone has a letter from A to G and at most %d sharps or flats, not '%c' and %d",
                            MOST_ALTERED,
                            letter,
                            alteration));
        }
    }

    /** Semitones above C, 0 to 11. */
    public int pitchClass() {
        return Math.floorMod(SEMITONES[LETTERS.indexOf(letter)] + alteration, 12);
    }

    /**
     * The tone above it, spelled by the letters between.
     *
     * @param steps letters up, 0 the same letter
     * @param semitones semitones up
     */
    public PitchName up(int steps, int semitones) {
        int index = LETTERS.indexOf(letter) + steps;
        int natural = SEMITONES[Math.floorMod(index, 7)] + 12 * Math.floorDiv(index, 7);
        int wanted = SEMITONES[LETTERS.indexOf(letter)] + alteration + semitones;
        return new PitchName(LETTERS.charAt(Math.floorMod(index, 7)), wanted - natural);
    }

    /** The same key by its plainest name: a natural where it is one, else one sharp or flat. */
    public PitchName simplified() {
        for (int altered : new int[] {0, Integer.signum(alteration)}) {
            for (int i = 0; i < LETTERS.length(); i++) {
                PitchName name = new PitchName(LETTERS.charAt(i), altered);
                if (name.pitchClass() == pitchClass()) {
                    return Math.abs(alteration) == 1 && altered != 0 ? this : name;
                }
            }
        }
        throw new IllegalStateException("every key has a name with one sharp or flat at most");
    }

    /** As typed: {@code Eb}, {@code F#}, {@code Bbb}. */
    public String text() {
        return letter + (alteration < 0 ? "b".repeat(-alteration) : "#".repeat(alteration));
    }

    @Override
    public String toString() {
        return text();
    }
}
