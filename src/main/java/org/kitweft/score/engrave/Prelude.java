package org.kitweft.score.engrave;

import java.awt.geom.Rectangle2D;
import org.kitweft.groove.Meter;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Score;

/** Clef, meter and repeat sign before the notes of a bar, and the room they take. */
final class Prelude {
    private static final double BEFORE_CLEF = 0.7;
    private static final double AFTER_CLEF = 0.9;
    private static final double AFTER_METER = 0.7;
    private static final double REPEAT_START = 1.9;

    /** From clef or meter to the sign that opens a repeat. */
    private static final double BEFORE_REPEAT = 0.7;

    private final MusicFont font;
    private final Score score;

    Prelude(MusicFont font, Score score) {
        this.font = font;
        this.score = score;
    }

    Glyph clef() {
        return switch (score.clef()) {
            case PERCUSSION -> Glyph.PERCUSSION_CLEF;
            case TREBLE -> Glyph.G_CLEF;
            case BASS -> Glyph.F_CLEF;
        };
    }

    /** The line a clef's origin stands on. */
    double clefY() {
        return score.clef() == Clef.TREBLE ? 1 : score.clef() == Clef.BASS ? -1 : 0;
    }

    /** Room at the start of a line beyond what the measure takes within a line. */
    double atLineStart(int measure) {
        double clef = BEFORE_CLEF + font.bounds(clef()).getMaxX() + AFTER_CLEF;
        Measure m = score.measures().get(measure);
        if (m.opensRepeat() && !m.showsMeter()) {
            return clef - 0.4 + BEFORE_REPEAT;
        }
        // The gap after a bar line is not needed where the clef has one behind it.
        return clef - (m.showsMeter() ? 0.4 : 0.6);
    }

    /** Room in a measure before its notes, wherever it stands. */
    double withinLine(int measure) {
        Measure m = score.measures().get(measure);
        return (m.showsMeter() ? meterWidth(m.meter()) + AFTER_METER : 0)
                + (m.opensRepeat() ? REPEAT_START : 0)
                + (m.opensRepeat() && m.showsMeter() ? BEFORE_REPEAT : 0);
    }

    private double meterWidth(Meter meter) {
        return Math.max(width(meter.count()), width(meter.unit()));
    }

    private double width(int number) {
        return Integer.toString(number)
                .chars()
                .mapToDouble(digit -> font.advance(HeadGlyphs.meterDigit((char) digit)))
                .sum();
    }

    /** Places clef, meter and repeat sign of a measure; x is where the bar starts. */
    void place(SignList signs, int measure, double start, boolean lineStart) {
        double x = start;
        Owner owner = Owner.of(measure, 0, 0);
        if (lineStart) {
            signs.glyph(Kind.CLEF, clef(), 1, x + BEFORE_CLEF, clefY(), owner);
            x += atLineStart(measure);
        }
        Measure m = score.measures().get(measure);
        if (m.showsMeter()) {
            double from = x + (lineStart ? 0.4 : Measures.AFTER_BAR_LINE);
            double middle = from + meterWidth(m.meter()) / 2;
            number(signs, m.meter().count(), middle, -1, owner);
            number(signs, m.meter().unit(), middle, 1, owner);
            x += meterWidth(m.meter()) + AFTER_METER;
        }
        if (m.opensRepeat()) {
            boolean atBarLine = !lineStart && !m.showsMeter();
            boolean closesBefore = atBarLine && score.measures().get(measure - 1).closesRepeat();
            double from = x + (m.showsMeter() ? BEFORE_REPEAT : 0);
            repeatStart(signs, from, atBarLine, closesBefore, owner);
        }
    }

    private void number(SignList signs, int number, double middle, double y, Owner owner) {
        double x = middle - width(number) / 2;
        for (char digit : Integer.toString(number).toCharArray()) {
            Glyph glyph = HeadGlyphs.meterDigit(digit);
            signs.glyph(Kind.METER, glyph, 1, x, y, owner);
            x += font.advance(glyph);
        }
    }

    private void repeatStart(
            SignList signs, double from, boolean atBarLine, boolean closesBefore, Owner owner) {
        double thick = font.recommended("thickBarlineThickness");
        double thin = font.recommended("thinBarlineThickness");
        double gap = font.recommended("barlineSeparation");
        // At a bar line the thick line takes the place of the thin one of the bar before, or is
        // that which closed the repeat before.
        double left = closesBefore ? from - thick : atBarLine ? from - thin : from;
        if (!closesBefore) {
            signs.box(Kind.BAR_LINE, left, -2, left + thick, 2, owner);
        }
        signs.box(Kind.BAR_LINE, left + thick + gap, -2, left + thick + gap + thin, 2, owner);
        repeatDots(signs, left + thick + 2 * gap + thin - 0.1, owner);
    }

    /** The two dots of a repeat sign. */
    void repeatDots(SignList signs, double x, Owner owner) {
        Rectangle2D dot = font.bounds(Glyph.REPEAT_DOT);
        double centre = dot.getCenterY();
        signs.glyph(Kind.REPEAT_DOT, Glyph.REPEAT_DOT, 1, x, -0.5 - centre, owner);
        signs.glyph(Kind.REPEAT_DOT, Glyph.REPEAT_DOT, 1, x, 0.5 - centre, owner);
    }

    /** Room that the end of a measure takes beyond a thin bar line. */
    double atEnd(int measure) {
        boolean last = measure == score.measures().size() - 1;
        return score.measures().get(measure).closesRepeat() ? 2.15 : last ? 0.9 : 0;
    }
}
