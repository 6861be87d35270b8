package org.kitweft.score.engrave;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.SwingMark;

/**
 * Swing as printed: of eighths and of sixteenths that two of them are played as a long and a short
 * one of a triplet, then, where they are not exactly that, the share in words; anything else in
 * words alone. Common practice, no source.
 *
 * @param size of the font of its words, in the unit of all its lengths, as in {@link TempoSign}
 */
record SwingSign(SwingMark mark, double size) {
    /** Two thirds, in whole percent. */
    private static final int TRIPLET_LEAST = 66;

    private static final int TRIPLET_MOST = 67;

    // Against the size of the words.
    private static final double AROUND_EQUALS = 0.3;
    private static final double BEFORE_WORDS = 0.5;

    // In heads' heights, as the font has its notes.
    private static final double NOTE_TO_NOTE = 2.35;
    private static final double BEAM = 0.5;
    private static final double BEAM_STEP = 0.8;
    private static final double HOOK = 1.1;
    private static final double OVER_NOTES = 0.45;
    private static final double BRACKET_HOOK = 0.65;
    private static final double NUMBER_GAP = 0.25;
    private static final double NUMBER = 0.85;

    /** From the first note, or its words, to the end. */
    double width(Fonts fonts) {
        double words = textWidth(fonts, words());
        if (!drawn()) {
            return words;
        }
        double notes = (width(straight(fonts.music())) + width(played(fonts.music()))) * scale();
        return notes
                + 2 * AROUND_EQUALS * size
                + textWidth(fonts, "=")
                + (words > 0 ? BEFORE_WORDS * size + words : 0);
    }

    /** Places it from its left end on a base line. */
    void place(SignList signs, Kind kind, double left, double base, Owner owner) {
        double x = left;
        if (drawn()) {
            MusicFont font = signs.fonts().music();
            x += notes(signs, kind, straight(font), x, base, owner) + AROUND_EQUALS * size;
            signs.text(kind, "=", TextStyle.REGULAR, size, x, base, owner);
            x += textWidth(signs.fonts(), "=") + AROUND_EQUALS * size;
            x += notes(signs, kind, played(font), x, base, owner) + BEFORE_WORDS * size;
        }
        if (!words().isEmpty()) {
            signs.text(kind, words(), TextStyle.REGULAR, size, x, base, owner);
        }
    }

    private boolean drawn() {
        return !mark.isStraight() && (mark.ofEighths() || mark.ofSixteenths());
    }

    private String words() {
        if (!drawn()) {
            return mark.words();
        }
        boolean triplet = mark.percent() >= TRIPLET_LEAST && mark.percent() <= TRIPLET_MOST;
        return triplet ? "" : "swing " + mark.percent() + " %";
    }

    private double textWidth(Fonts fonts, String text) {
        return fonts.text().width(TextStyle.REGULAR, size, text);
    }

    private double scale() {
        return TempoSign.NOTE * size;
    }

    private static double width(Area notes) {
        return notes.getBounds2D().getMaxX();
    }

    /** One sign, so that its parts, which touch, are one outline; returns its width. */
    private double notes(
            SignList signs, Kind kind, Area notes, double x, double base, Owner owner) {
        Path2D path = new Path2D.Double(notes, AffineTransform.getScaleInstance(scale(), scale()));
        double up = base - TempoSign.LIFT * size;
        signs.shape(kind, path, x, up, Optional.empty(), owner);
        return width(notes) * scale();
    }

    /** The pair as it is written. */
    private Area straight(MusicFont font) {
        return beamed(font, mark.ofEighths() ? 1 : 2);
    }

    /** The pair as it is played. */
    private Area played(MusicFont font) {
        Area area;
        double middle;
        Rectangle2D quarter = font.bounds(Glyph.METRONOME_QUARTER);
        double end = NOTE_TO_NOTE + quarter.getMaxX();
        if (mark.ofEighths()) {
            area = new Area(font.outline(Glyph.METRONOME_QUARTER));
            area.add(moved(font.outline(Glyph.METRONOME_EIGHTH), 1, NOTE_TO_NOTE, 0));
            middle = end / 2;
        } else {
            area = beamed(font, 1);
            double y = quarter.getMinY() + BEAM_STEP;
            area.add(box(end - HOOK, y, end, y + BEAM));
            middle = (quarter.getMaxX() + end) / 2;
        }
        Rectangle2D three = font.bounds(Glyph.TUPLET_3);
        double over = area.getBounds2D().getMinY() - OVER_NOTES;
        double line = over - (mark.ofEighths() ? BRACKET_HOOK : NUMBER * three.getHeight() / 2);
        area.add(
                moved(
                        font.outline(Glyph.TUPLET_3),
                        NUMBER,
                        middle - NUMBER * three.getCenterX(),
                        line - NUMBER * three.getCenterY()));
        if (mark.ofEighths()) {
            double half = font.recommended("tupletBracketThickness") / 2;
            double gap = NUMBER * three.getWidth() / 2 + NUMBER_GAP;
            area.add(box(0, line - half, middle - gap, line + half));
            area.add(box(middle + gap, line - half, end, line + half));
            area.add(box(0, line - half, 2 * half, over));
            area.add(box(end - 2 * half, line - half, end, over));
        }
        return area;
    }

    private static Area beamed(MusicFont font, int beams) {
        Shape note = font.outline(Glyph.METRONOME_QUARTER);
        Rectangle2D box = font.bounds(Glyph.METRONOME_QUARTER);
        Area area = new Area(note);
        area.add(moved(note, 1, NOTE_TO_NOTE, 0));
        for (int beam = 0; beam < beams; beam++) {
            double y = box.getMinY() + beam * BEAM_STEP;
            double left = box.getMaxX() - font.recommended("stemThickness");
            area.add(box(left, y, box.getMaxX() + NOTE_TO_NOTE, y + BEAM));
        }
        return area;
    }

    private static Area moved(Shape shape, double scale, double x, double y) {
        return new Area(
                new AffineTransform(scale, 0, 0, scale, x, y).createTransformedShape(shape));
    }

    private static Area box(double x1, double y1, double x2, double y2) {
        return new Area(new Rectangle2D.Double(x1, y1, x2 - x1, y2 - y1));
    }
}
