package org.kitweft.score.engrave;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Head;

/**
 * The slur from the first grace note of a flam or drag to its note: on the side of the heads, where
 * neither stems nor accents stand. Common practice, no source.
 */
final class GraceSlur {
    /** Paper between a head and the slur. */
    private static final double OFF_HEAD = 0.18;

    /** How far its middle lies beyond its ends. */
    private static final double[] HEIGHTS = {0.38, 0.22, 0.65, 0.95, 1.25};

    private static final double FLAT = 0.15;

    /** Where under the head it ends, from left to right. */
    private static final double[] ENDS = {0.45, 0.15};

    /** Thickness against a full slur's: grace notes are small. */
    private static final double SCALE = 0.75;

    private static final double CLEAR = 0.06;

    private static final Set<Kind> OBSTACLES =
            EnumSet.of(
                    Kind.HEAD,
                    Kind.PARENTHESIS,
                    Kind.ACCIDENTAL,
                    Kind.DOT,
                    Kind.STEM,
                    Kind.FLAG,
                    Kind.BEAM,
                    Kind.BUZZ,
                    Kind.TIE,
                    Kind.SLUR,
                    Kind.GRACE_HEAD,
                    Kind.GRACE_STEM);

    private final MusicFont font;
    private final SignList signs;

    GraceSlur(MusicFont font, SignList signs) {
        this.font = font;
        this.signs = signs;
    }

    void place(ChordShape chord, GraceShape grace, double x, Owner owner) {
        double side = chord.up() ? 1 : -1;
        List<Head> graced = chord.chord().gracedHeads();
        ChordShape.PlacedHead to =
                farthest(
                        chord.heads().stream().filter(h -> graced.contains(h.head())).toList(),
                        side);
        double small = font.bounds(Glyph.HEAD_BLACK).getHeight() / 2 * Measures.GRACE_SCALE;
        Point2D from =
                new Point2D.Double(
                        x + grace.headXs().get(0) + grace.headWidth() / 2,
                        to.y() + side * (small + OFF_HEAD));
        List<Path2D> shapes = shapes(chord, to, x, from, side);
        Path2D best =
                shapes.stream()
                        .filter(s -> !meets(s, from))
                        .findFirst()
                        .orElse(shapes.get(shapes.size() - 1));
        signs.shape(Kind.SLUR, best, from.getX(), from.getY(), Optional.empty(), owner);
    }

    private static ChordShape.PlacedHead farthest(List<ChordShape.PlacedHead> heads, double side) {
        return heads.stream().reduce((a, b) -> side * b.y() > side * a.y() ? b : a).orElseThrow();
    }

    /** From the best looking on: under the head, deeper, under the chord, short and flat. */
    private List<Path2D> shapes(
            ChordShape chord, ChordShape.PlacedHead to, double x, Point2D from, double side) {
        List<Path2D> shapes = new ArrayList<>();
        for (ChordShape.PlacedHead head : List.of(to, farthest(chord.heads(), side))) {
            var box = font.bounds(head.glyph());
            double left = x + head.x() + box.getMinX();
            double under = head.y() + side * (box.getHeight() / 2 + OFF_HEAD);
            for (double height : HEIGHTS) {
                for (double share : ENDS) {
                    double end = left + share * box.getWidth();
                    shapes.add(bow(from, end, under, side * height));
                }
            }
        }
        double end = x + leftOfHeads(chord) - OFF_HEAD;
        shapes.add(bow(from, end, to.y(), side * FLAT));
        shapes.add(bow(from, end, from.getY(), side * FLAT));
        return shapes;
    }

    /** Where a chord begins without its grace notes. */
    private double leftOfHeads(ChordShape chord) {
        return Stream.concat(
                        chord.heads().stream().map(h -> h.x() + font.bounds(h.glyph()).getMinX()),
                        chord.beside().stream()
                                .map(b -> b.x() + b.scale() * font.bounds(b.glyph()).getMinX()))
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
    }

    private Path2D bow(Point2D from, double x, double y, double height) {
        return Curves.bow(
                x - from.getX(),
                y - from.getY(),
                height,
                SCALE * font.recommended("slurEndpointThickness"),
                SCALE * font.recommended("slurMidpointThickness"));
    }

    private boolean meets(Path2D path, Point2D at) {
        Path2D placed =
                new Path2D.Double(path, AffineTransform.getTranslateInstance(at.getX(), at.getY()));
        return signs.signs().stream()
                .filter(sign -> OBSTACLES.contains(sign.kind()))
                .map(PlacedSign::bounds)
                .anyMatch(
                        b ->
                                placed.intersects(
                                        b.getX() - CLEAR,
                                        b.getY() - CLEAR,
                                        b.getWidth() + 2 * CLEAR,
                                        b.getHeight() + 2 * CLEAR));
    }
}
