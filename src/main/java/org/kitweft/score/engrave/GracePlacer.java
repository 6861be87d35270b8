package org.kitweft.score.engrave;

import java.awt.geom.Point2D;
import java.util.List;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Head;
import org.kitweft.score.model.NoteValue;

/** Places grace notes: small heads, short stems; a slashed flag for one, two beams for two. */
final class GracePlacer {
    private static final double BEAM = 0.32;
    private static final double BEAM_STEP = 0.5;
    private static final double STEM_HALF = 0.045;

    private final MusicFont font;
    private final SignList signs;

    GracePlacer(MusicFont font, SignList signs) {
        this.font = font;
        this.signs = signs;
    }

    void place(ChordShape chord, GraceShape grace, double x, Clef clef, Owner owner) {
        double side = chord.up() ? -1 : 1;
        double scale = Measures.GRACE_SCALE;
        List<Head> heads = chord.chord().gracedHeads();
        double tip =
                side
                        * (heads.stream()
                                        .mapToDouble(h -> side * ChordShape.yOf(h.place(), clef))
                                        .max()
                                        .orElse(0)
                                + Measures.GRACE_STEM);
        double[] stems = new double[grace.headXs().size()];
        for (int i = 0; i < stems.length; i++) {
            double headX = x + grace.headXs().get(i);
            stems[i] = chord.up() ? headX + grace.headWidth() - STEM_HALF : headX + STEM_HALF;
            double low = tip;
            for (Head head : heads) {
                double y = ChordShape.yOf(head.place(), clef);
                Glyph glyph = HeadGlyphs.head(head.notehead(), NoteValue.EIGHTH);
                ledger(headX, y, owner);
                double glyphX =
                        chord.up()
                                ? headX + grace.headWidth() - font.bounds(glyph).getMaxX() * scale
                                : headX;
                signs.glyph(Kind.GRACE_HEAD, glyph, scale, glyphX, y, owner);
                double anchor =
                        font.anchor(glyph, chord.up() ? "stemUpSE" : "stemDownNW")
                                .map(Point2D::getY)
                                .orElse(0.0);
                low = side * (y + anchor * scale) < side * low ? y + anchor * scale : low;
            }
            signs.box(
                    Kind.GRACE_STEM,
                    stems[i] - STEM_HALF,
                    Math.min(low, tip),
                    stems[i] + STEM_HALF,
                    Math.max(low, tip),
                    owner);
        }
        if (stems.length == 1) {
            flag(stems[0], tip, chord.up(), owner);
        } else {
            for (int beam = 0; beam < 2; beam++) {
                double y = tip - side * beam * BEAM_STEP;
                double other = y - side * BEAM;
                signs.box(
                        Kind.GRACE_STEM,
                        stems[0] - STEM_HALF,
                        Math.min(y, other),
                        stems[stems.length - 1] + STEM_HALF,
                        Math.max(y, other),
                        owner);
            }
        }
    }

    private void flag(double stem, double tip, boolean up, Owner owner) {
        double scale = Measures.GRACE_SCALE;
        Glyph flag = up ? Glyph.FLAG_8_UP : Glyph.FLAG_8_DOWN;
        signs.glyph(Kind.GRACE_STEM, flag, scale, stem - STEM_HALF, tip, owner);
        // Through stem and flag, as the font's slash anchors have it but shorter.
        double side = up ? 1 : -1;
        double x1 = stem - 0.4;
        double x2 = stem + 0.62;
        double y1 = tip + side * 1.25;
        double y2 = tip + side * 0.5;
        double half = 0.055;
        signs.polygon(
                Kind.GRACE_STEM,
                List.of(
                        new Point2D.Double(x1, y1 - half),
                        new Point2D.Double(x2, y2 - half),
                        new Point2D.Double(x2, y2 + half),
                        new Point2D.Double(x1, y1 + half)),
                owner);
    }

    private void ledger(double headX, double y, Owner owner) {
        double half = font.recommended("legerLineThickness") / 2;
        double width = font.bounds(Glyph.HEAD_BLACK).getMaxX() * Measures.GRACE_SCALE;
        for (int line = 3; line <= Math.abs(y); line++) {
            double at = Math.signum(y) * line;
            signs.box(
                    Kind.LEDGER_LINE,
                    headX - 0.15,
                    at - half,
                    headX + width + 0.15,
                    at + half,
                    owner);
        }
    }
}
