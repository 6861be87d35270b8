package org.kitweft.score.engrave;

/** What a placed sign is: decides its colour and which signs it may touch. */
public enum Kind {
    /** One of the five lines. */
    STAFF_LINE,
    /** A short line for notes off the staff. */
    LEDGER_LINE,
    /** A bar line, thin or thick. */
    BAR_LINE,
    /** A dot of a repeat sign. */
    REPEAT_DOT,
    /** The clef. */
    CLEF,
    /** A digit of the meter. */
    METER,
    /** A notehead. */
    HEAD,
    /** A parenthesis of a ghost note. */
    PARENTHESIS,
    /** A sharp or natural. */
    ACCIDENTAL,
    /** A dot after a note or rest. */
    DOT,
    /** A stem. */
    STEM,
    /** A flag. */
    FLAG,
    /** A beam. */
    BEAM,
    /** A tie. */
    TIE,
    /** A slur from grace notes to their note. */
    SLUR,
    /** A z on a stem. */
    BUZZ,
    /** A rest. */
    REST,
    /** An accent. */
    ACCENT,
    /** A circle or plus. */
    OPEN_OR_CLOSED,
    /** The small head of a grace note. */
    GRACE_HEAD,
    /** Stem, flag, beam or slash of grace notes. */
    GRACE_STEM,
    /** The number of a tuplet. */
    TUPLET_NUMBER,
    /** The bracket of a tuplet. */
    TUPLET_BRACKET,
    /** A sticking letter. */
    STICKING,
    /** A counting syllable. */
    COUNT,
    /** The name of a key. */
    KEY_NAME,
    /** A bar number. */
    BAR_NUMBER,
    /** Words over the staff. */
    HEADING,
    /** A chord of the band. */
    CHORD_SYMBOL,
    /** The tempo, or how pairs of notes swing. */
    TEMPO,
    /** How often a repeat is played. */
    REPEAT_TIMES,
    /** Words on a page. */
    TEXT,
    /** Quiet words on a page. */
    ASIDE,
    /** A line or area of a page that belongs to no staff. */
    DRAWING
}
