package org.kitweft.score.handout;

import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.TextStyle;

/** A tempo as printed: the note that is the beat, and how many of them a minute has. */
final class TempoSign {
    private static final double SIZE = 9.5;
    private static final double SCALE = 3.2;
    private static final double LIFT = 1.2;

    private TempoSign() {}

    /**
     * Places it so that it ends at {@code right}.
     *
     * @return where it begins
     */
    static double place(SignList signs, Tempo tempo, Meter meter, double right, double base) {
        String number = "= " + tempo.beatsPerMinute();
        double x = right - signs.fonts().text().width(TextStyle.REGULAR, SIZE, number);
        signs.text(Kind.TEXT, number, TextStyle.REGULAR, SIZE, x, base, Owner.NONE);
        if (meter.isCompound()) {
            x -= 3.5;
            signs.glyph(Kind.TEXT, Glyph.METRONOME_DOT, SCALE, x, base - LIFT, Owner.NONE);
        }
        boolean eighth = meter.unit() == 8 && !meter.isCompound();
        Glyph note = eighth ? Glyph.METRONOME_EIGHTH : Glyph.METRONOME_QUARTER;
        x -= signs.fonts().music().bounds(note).getMaxX() * SCALE + 3;
        signs.glyph(Kind.TEXT, note, SCALE, x, base - LIFT, Owner.NONE);
        return x;
    }
}
