package org.kitweft.score.font;

/** The signs we use of the Standard Music Font Layout (SMuFL 1.4), by their canonical names. */
public enum Glyph {
    /** The percussion clef. */
    PERCUSSION_CLEF("unpitchedPercussionClef1", 0xE069),
    /** The treble clef. */
    G_CLEF("gClef", 0xE050),
    /** The bass clef. */
    F_CLEF("fClef", 0xE062),
    /** The head of a half note. */
    HEAD_HALF("noteheadHalf", 0xE0A3),
    /** The head of a quarter note and shorter. */
    HEAD_BLACK("noteheadBlack", 0xE0A4),
    /** A saltire. */
    HEAD_X("noteheadXBlack", 0xE0A9),
    /** A saltire in a circle. */
    HEAD_CIRCLE_X("noteheadCircleX", 0xE0B3),
    /** A diamond. */
    HEAD_DIAMOND("noteheadDiamondBlack", 0xE0DB),
    /** A triangle. */
    HEAD_TRIANGLE("noteheadTriangleUpBlack", 0xE0BE),
    /** A slanted stroke. */
    HEAD_SLASH("noteheadSlashVerticalEndsSmall", 0xE105),
    /** A square. */
    HEAD_SQUARE("noteheadSquareBlack", 0xE0B9),
    /** A plus. */
    HEAD_PLUS("noteheadPlusBlack", 0xE0AF),
    /** Opens the parentheses of a ghost note. */
    PARENTHESIS_LEFT("noteheadParenthesisLeft", 0xE0F5),
    /** Closes the parentheses of a ghost note. */
    PARENTHESIS_RIGHT("noteheadParenthesisRight", 0xE0F6),
    /** The dot after a note. */
    DOT("augmentationDot", 0xE1E7),
    /** One flag, stem up. */
    FLAG_8_UP("flag8thUp", 0xE240),
    /** One flag, stem down. */
    FLAG_8_DOWN("flag8thDown", 0xE241),
    /** Two flags, stem up. */
    FLAG_16_UP("flag16thUp", 0xE242),
    /** Two flags, stem down. */
    FLAG_16_DOWN("flag16thDown", 0xE243),
    /** Three flags, stem up. */
    FLAG_32_UP("flag32ndUp", 0xE244),
    /** Three flags, stem down. */
    FLAG_32_DOWN("flag32ndDown", 0xE245),
    /** Four flags, stem up. */
    FLAG_64_UP("flag64thUp", 0xE246),
    /** Four flags, stem down. */
    FLAG_64_DOWN("flag64thDown", 0xE247),
    /** Five flags, stem up. */
    FLAG_128_UP("flag128thUp", 0xE248),
    /** Five flags, stem down. */
    FLAG_128_DOWN("flag128thDown", 0xE249),
    /** Six flags, stem up. */
    FLAG_256_UP("flag256thUp", 0xE24A),
    /** Six flags, stem down. */
    FLAG_256_DOWN("flag256thDown", 0xE24B),
    /** Raised by a semitone. */
    SHARP("accidentalSharp", 0xE262),
    /** No longer raised. */
    NATURAL("accidentalNatural", 0xE261),
    /** An accent over a note. */
    ACCENT_ABOVE("articAccentAbove", 0xE4A0),
    /** An accent under a note. */
    ACCENT_BELOW("articAccentBelow", 0xE4A1),
    /** A small circle: open. */
    OPEN("stringsHarmonic", 0xE614),
    /** A plus: closed. */
    CLOSED("brassMuteClosed", 0xE5E5),
    /** A z on the stem. */
    BUZZ("buzzRoll", 0xE22A),
    /** A whole rest. */
    REST_WHOLE("restWhole", 0xE4E3),
    /** A half rest. */
    REST_HALF("restHalf", 0xE4E4),
    /** A quarter rest. */
    REST_QUARTER("restQuarter", 0xE4E5),
    /** An eighth rest. */
    REST_8("rest8th", 0xE4E6),
    /** A sixteenth rest. */
    REST_16("rest16th", 0xE4E7),
    /** A thirty-second rest. */
    REST_32("rest32nd", 0xE4E8),
    /** A sixty-fourth rest. */
    REST_64("rest64th", 0xE4E9),
    /** A 128th rest. */
    REST_128("rest128th", 0xE4EA),
    /** A 256th rest. */
    REST_256("rest256th", 0xE4EB),
    /** A digit of a meter; the others follow it. */
    METER_0("timeSig0", 0xE080),
    /** A digit of a meter. */
    METER_1("timeSig1", 0xE081),
    /** A digit of a meter. */
    METER_2("timeSig2", 0xE082),
    /** A digit of a meter. */
    METER_3("timeSig3", 0xE083),
    /** A digit of a meter. */
    METER_4("timeSig4", 0xE084),
    /** A digit of a meter. */
    METER_5("timeSig5", 0xE085),
    /** A digit of a meter. */
    METER_6("timeSig6", 0xE086),
    /** A digit of a meter. */
    METER_7("timeSig7", 0xE087),
    /** A digit of a meter. */
    METER_8("timeSig8", 0xE088),
    /** A digit of a meter. */
    METER_9("timeSig9", 0xE089),
    /** A digit of a tuplet; the others follow it. */
    TUPLET_0("tuplet0", 0xE880),
    /** A digit of a tuplet. */
    TUPLET_1("tuplet1", 0xE881),
    /** A digit of a tuplet. */
    TUPLET_2("tuplet2", 0xE882),
    /** A digit of a tuplet. */
    TUPLET_3("tuplet3", 0xE883),
    /** A digit of a tuplet. */
    TUPLET_4("tuplet4", 0xE884),
    /** A digit of a tuplet. */
    TUPLET_5("tuplet5", 0xE885),
    /** A digit of a tuplet. */
    TUPLET_6("tuplet6", 0xE886),
    /** A digit of a tuplet. */
    TUPLET_7("tuplet7", 0xE887),
    /** A digit of a tuplet. */
    TUPLET_8("tuplet8", 0xE888),
    /** A digit of a tuplet. */
    TUPLET_9("tuplet9", 0xE889),
    /** One dot of a repeat sign. */
    REPEAT_DOT("repeatDot", 0xE044),
    /** A quarter note in text. */
    METRONOME_QUARTER("metNoteQuarterUp", 0xECA5),
    /** An eighth note in text. */
    METRONOME_EIGHTH("metNote8thUp", 0xECA7),
    /** A dot in text. */
    METRONOME_DOT("metAugmentationDot", 0xECB7);

    private final String smuflName;
    private final int codePoint;

    Glyph(String smuflName, int codePoint) {
        this.smuflName = smuflName;
        this.codePoint = codePoint;
    }

    /** The canonical name in the layout. */
    public String smuflName() {
        return smuflName;
    }

    /** Its place in the private use area. */
    public int codePoint() {
        return codePoint;
    }
}
