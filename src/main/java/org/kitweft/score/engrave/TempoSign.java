package org.kitweft.score.engrave;

import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.TextStyle;

/**
 * A tempo as printed: the note that is the beat, and how many of them a minute has. Lengths are in
 * the unit of its size, points or staff spaces.
 *
 * @param size of the font of its number
 */
public record TempoSign(Tempo tempo, Meter meter, double size) {
    /** Of its note, against the size of the number. */
    static final double NOTE = 0.337;

    /** From the base line up to the middle of the head, against the size of the number. */
    static final double LIFT = 0.126;

    // Against the size of the number.
    private static final double AFTER_NOTE = 0.316;
    private static final double DOT = 0.368;

    /** From its note to the end of its number. */
    public double width(Fonts fonts) {
        return beforeNumber(fonts) + fonts.text().width(TextStyle.REGULAR, size, number());
    }

    private double beforeNumber(Fonts fonts) {
        double head = fonts.music().bounds(note()).getMaxX() * NOTE;
        return size * (head + AFTER_NOTE + (meter.isCompound() ? DOT : 0));
    }

    private String number() {
        return "= " + tempo.beatsPerMinute();
    }

    private Glyph note() {
        boolean eighth = meter.unit() == 8 && !meter.isCompound();
        return eighth ? Glyph.METRONOME_EIGHTH : Glyph.METRONOME_QUARTER;
    }

    /** Places it from its left end on a base line. */
    public void place(SignList signs, Kind kind, double left, double base, Owner owner) {
        double number = left + beforeNumber(signs.fonts());
        double up = base - LIFT * size;
        signs.glyph(kind, note(), NOTE * size, left, up, owner);
        if (meter.isCompound()) {
            signs.glyph(kind, Glyph.METRONOME_DOT, NOTE * size, number - DOT * size, up, owner);
        }
        signs.text(kind, number(), TextStyle.REGULAR, size, number, base, owner);
    }
}
