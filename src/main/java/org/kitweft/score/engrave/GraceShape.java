package org.kitweft.score.engrave;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;

/**
 * The grace notes before a chord: one with a slashed flag for a flam, two under a double beam for a
 * drag. All in the chord's own coordinates, stems the chord's way.
 */
final class GraceShape {
    private static final double GAP = 0.3;
    private static final double BETWEEN = 0.42;

    private final List<Double> headXs = new ArrayList<>();
    private final double left;
    private final double headWidth;

    GraceShape(MusicFont font, ChordShape chord, int notes) {
        double scale = Measures.GRACE_SCALE;
        this.headWidth = font.bounds(Glyph.HEAD_BLACK).getMaxX() * scale;
        double beyondStem = notes == 1 ? 0.62 : 0;
        double end = chord.left() - GAP - (chord.up() ? beyondStem : 0);
        for (int i = 0; i < notes; i++) {
            headXs.add(0, end - headWidth - i * (headWidth + BETWEEN));
        }
        this.left = headXs.get(0) - (notes == 1 ? 0.25 : 0);
    }

    /** Where each small head begins, from left to right. */
    List<Double> headXs() {
        return headXs;
    }

    double headWidth() {
        return headWidth;
    }

    double left() {
        return left;
    }
}
