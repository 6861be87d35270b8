package org.kitweft.score.engrave;

/** Lengths of engraving that the font does not recommend, in staff spaces. */
final class Measures {
    /** Length of a stem from the head nearest its tip: an octave. Common practice, no source. */
    static final double STEM = 3.5;

    /** What a third and every further beam adds to a stem. */
    static final double STEM_PER_BEAM = 0.82;

    /**
     * Paper between two beams: a little more than the 0.25 of the font, as LilyPond has it; at 100
     * % on a screen two beams of a sixteenth would run into one otherwise.
     */
    static final double BEAM_GAP = 0.32;

    /** Grace notes against full size: between the 0.6 and 0.7 that are common, no source. */
    static final double GRACE_SCALE = 0.64;

    /** Stem of a grace note from its head. */
    static final double GRACE_STEM = 2.1;

    /** Font size of sticking letters, so that a capital is as high as 1.25 spaces. */
    static final double STICKING_SIZE = 1.9;

    /** Font size of letters of grace notes. */
    static final double GRACE_LETTER_SIZE = 1.5;

    /** Font size of counting syllables and key names. */
    static final double COUNT_SIZE = 1.55;

    /** Font size of bar numbers. */
    static final double BAR_NUMBER_SIZE = 1.5;

    /** Font size of words over the staff. */
    static final double HEADING_SIZE = 1.9;

    /** Font size of chord symbols. */
    static final double CHORD_SIZE = 2.25;

    /** The least paper between two chord symbols. */
    static final double CHORD_GAP = 1;

    /** Font size of the tempo and of swing. */
    static final double TEMPO_SIZE = 2;

    /** Paper on each side of a counting syllable beside the letters' gap: it is to stand alone. */
    static final double COUNT_MARGIN = 0.2;

    /** The least paper between the signs of two columns. */
    static final double COLUMN_GAP = 0.28;

    /** The least paper between two letters under the staff. */
    static final double LETTER_GAP = 0.35;

    /** From a bar line to the first sign after it. */
    static final double AFTER_BAR_LINE = 0.9;

    /** From the last sign of a bar to the bar line. */
    static final double BEFORE_BAR_LINE = 0.5;

    /** Half the staff's height. */
    static final double HALF_STAFF = 2;

    private Measures() {}
}
