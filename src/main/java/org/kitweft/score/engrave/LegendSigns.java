package org.kitweft.score.engrave;

import java.util.Optional;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.LegendEntry;
import org.kitweft.score.model.NoteValue;
import org.kitweft.score.model.Sign;

/** The little staff of a legend. */
public final class LegendSigns {
    private LegendSigns() {}

    /** Five lines. */
    public static void staff(SignList signs, double width) {
        double half = signs.fonts().music().recommended("staffLineThickness") / 2;
        for (int line = -2; line <= 2; line++) {
            signs.box(Kind.STAFF_LINE, 0, line - half, width, line + half, Owner.NONE);
        }
    }

    /** A quarter note where an entry stands, with its sign. */
    public static void note(SignList signs, LegendEntry entry, Clef clef, double middle) {
        MusicFont font = signs.fonts().music();
        Glyph glyph = HeadGlyphs.head(entry.notehead(), NoteValue.QUARTER);
        double y = ChordShape.yOf(entry.place(), clef);
        double width = font.bounds(glyph).getMaxX();
        double x = middle - width / 2;
        double half = font.recommended("legerLineThickness") / 2;
        double reach = font.recommended("legerLineExtension");
        for (int line = 3; line <= Math.abs(y); line++) {
            double at = Math.signum(y) * line;
            signs.box(
                    Kind.LEDGER_LINE,
                    x - reach,
                    at - half,
                    x + width + reach,
                    at + half,
                    Owner.NONE);
        }
        signs.glyph(Kind.HEAD, glyph, 1, x, y, Owner.NONE);
        if (entry.sign().equals(Optional.of(Sign.OPEN))) {
            var box = font.bounds(Glyph.OPEN);
            signs.glyph(
                    Kind.OPEN_OR_CLOSED,
                    Glyph.OPEN,
                    1,
                    middle - box.getCenterX(),
                    Math.min(y - 0.5, -2) - 0.35 - box.getMaxY(),
                    Owner.NONE);
        }
    }
}
