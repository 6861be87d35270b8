package org.kitweft.band;

import java.util.Objects;

/**
 * What is asked of a band, in the words it is asked with: a chart as it was typed, the name of a
 * style, the clave's direction, a seed, and whether the band plays at all. This is what lessons
 * keep and windows edit; {@link #arrangement} is what plays. Immutable, and always playable.
 *
 * @param on whether the band plays
 * @param chords a chart as {@link ChordChart#parse(String)} reads it
 * @param style the name of a built-in style
 * @param clave which side of the clave comes first, in styles that have one
 * @param seed for what the band varies
 */
public record Backing(boolean on, String chords, String style, ClaveDirection clave, long seed) {
    /** Where nothing is said: off, a turn back home in C for whoever switches it on. */
    public static final Backing DEFAULT =
            new Backing(false, "Dm7 G7 | Cmaj7 %", "rock", ClaveDirection.THREE_TWO, 0);

    /**
     * @throws org.kitweft.pattern.TextFormatException if the chords cannot be read
     * @throws org.kitweft.kit.UnknownNameException if there is no such style
     */
    public Backing {
        Objects.requireNonNull(clave, "clave");
        ChordChart.parse(chords);
        BuiltInStyles.checkName(style);
    }

    /** The same, playing or not. */
    public Backing withOn(boolean other) {
        return new Backing(other, chords, style, clave, seed);
    }

    /**
     * The same with other chords.
     *
     * @throws org.kitweft.pattern.TextFormatException if they cannot be read
     */
    public Backing withChords(String other) {
        return new Backing(on, other, style, clave, seed);
    }

    /** The same in another style. */
    public Backing withStyle(String other) {
        return new Backing(on, chords, other, clave, seed);
    }

    /** The same with the clave in a direction. */
    public Backing withClave(ClaveDirection other) {
        return new Backing(on, chords, style, other, seed);
    }

    /** The same with another seed. */
    public Backing withSeed(long other) {
        return new Backing(on, chords, style, clave, other);
    }

    /** The chart. */
    public ChordChart chart() {
        return ChordChart.parse(chords);
    }

    /**
     * The arrangement for a phrase of so many bars; of a longer chart the first bars.
     *
     * @param bars of the phrase, from 1
     */
    public Arrangement arrangement(int bars) {
        return new Arrangement(chart().first(bars), BuiltInStyles.load(style), clave, seed);
    }
}
