package org.kitweft.band;

/**
 * A tone of a chord, counted from its root along the major scale.
 *
 * @param number 1 to 13
 * @param alteration semitones above (sharp) or below (flat) the tone of the major scale
 */
public record ChordDegree(int number, int alteration) implements Comparable<ChordDegree> {
    private static final int[] MAJOR_SCALE = {0, 2, 4, 5, 7, 9, 11};

    public ChordDegree {
        if (number < 1 || number > 13 || Math.abs(alteration) > 2) {
            throw new IllegalArgumentException(
                    "degree %d altered by %d: expected 1 to 13, altered by 2 at most"
                            .formatted(number, alteration));
        }
    }

    /** Semitones above the root, 0 to 23. */
    public int semitones() {
        int steps = number - 1;
        return MAJOR_SCALE[steps % 7] + 12 * (steps / 7) + alteration;
    }

    /** Its tone on a root, spelled right: the flat third of C is E flat. */
    public PitchName on(PitchName root) {
        return root.up(number - 1, semitones());
    }

    /** As typed: {@code b7}, {@code #11}. */
    public String text() {
        return (alteration < 0 ? "b".repeat(-alteration) : "#".repeat(alteration)) + number;
    }

    @Override
    public int compareTo(ChordDegree other) {
        return number != other.number
                ? Integer.compare(number, other.number)
                : Integer.compare(alteration, other.alteration);
    }
}
