package org.kitweft.score.engrave;

import org.kitweft.kit.Notehead;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.model.NoteValue;

/** Which glyph draws what. */
final class HeadGlyphs {
    private HeadGlyphs() {}

    static Glyph head(Notehead notehead, NoteValue value) {
        return switch (notehead) {
            case NORMAL ->
                    value.compareTo(NoteValue.HALF) <= 0 ? Glyph.HEAD_HALF : Glyph.HEAD_BLACK;
            case X -> Glyph.HEAD_X;
            case CIRCLE_X -> Glyph.HEAD_CIRCLE_X;
            case DIAMOND -> Glyph.HEAD_DIAMOND;
            case TRIANGLE -> Glyph.HEAD_TRIANGLE;
            case SLASH -> Glyph.HEAD_SLASH;
            case SQUARE -> Glyph.HEAD_SQUARE;
            case CROSS -> Glyph.HEAD_PLUS;
        };
    }

    static Glyph rest(NoteValue value) {
        return Glyph.values()[Glyph.REST_WHOLE.ordinal() + value.ordinal()];
    }

    /** The flags of a value that has some. */
    static Glyph flag(NoteValue value, boolean up) {
        return Glyph.values()[Glyph.FLAG_8_UP.ordinal() + 2 * (value.flags() - 1) + (up ? 0 : 1)];
    }

    static Glyph meterDigit(char digit) {
        return Glyph.values()[Glyph.METER_0.ordinal() + digit - '0'];
    }

    static Glyph tupletDigit(char digit) {
        return Glyph.values()[Glyph.TUPLET_0.ordinal() + digit - '0'];
    }
}
