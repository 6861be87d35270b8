package org.kitweft.score.engrave;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Beam;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Event;

/**
 * Places the beams of one group: slanted as its outer notes lie but gently, flat where an inner
 * note lies beyond them, and far enough from every head. Common practice, no source.
 */
final class BeamPlacer {
    private static final double STEEPEST = 0.18;
    private static final double MOST_RISE = 1;
    private static final double HOOK = 1.1;
    private static final double CLEAR = 0.3;
    private static final Set<Kind> OBSTACLES =
            EnumSet.of(Kind.HEAD, Kind.PARENTHESIS, Kind.ACCIDENTAL, Kind.GRACE_HEAD);

    private final MusicFont font;
    private final SignList signs;
    private final MeasureShape shape;
    private final int measure;
    private final int voice;
    private final ToDoubleFunction<Event> xOf;
    private final Clef clef;

    BeamPlacer(
            MusicFont font,
            SignList signs,
            MeasureShape shape,
            int measure,
            int voice,
            ToDoubleFunction<Event> xOf,
            Clef clef) {
        this.font = font;
        this.signs = signs;
        this.shape = shape;
        this.measure = measure;
        this.voice = voice;
        this.xOf = xOf;
        this.clef = clef;
    }

    private double stemX(Chord chord) {
        return xOf.applyAsDouble(chord) + shape.shape(chord).stemX();
    }

    /** Places the beams of a group and notes the line of its stems' tips. */
    void place(List<Chord> group, Map<Chord, MeasureEngraver.StemLine> tips) {
        MeasureEngraver.StemLine line = line(group);
        group.forEach(chord -> tips.put(chord, line));
        double side = shape.shape(group.get(0)).up() ? -1 : 1;
        double thickness = font.recommended("beamThickness");
        double step = thickness + Measures.BEAM_GAP;
        double half = font.recommended("stemThickness") / 2;
        int levels = group.stream().mapToInt(c -> c.beams().size()).max().orElse(0);
        for (int level = 0; level < levels; level++) {
            double offset = -side * level * step;
            double begin = 0;
            for (int i = 0; i < group.size(); i++) {
                Chord chord = group.get(i);
                if (chord.beams().size() <= level) {
                    continue;
                }
                double x = stemX(chord);
                Beam beam = chord.beams().get(level);
                if (beam == Beam.BEGIN) {
                    begin = x - half;
                } else if (beam == Beam.END) {
                    beam(line, begin, x + half, offset, side * thickness, chord);
                } else if (beam == Beam.FORWARD_HOOK) {
                    double room = i + 1 < group.size() ? (stemX(group.get(i + 1)) - x) / 2 : HOOK;
                    double to = x + Math.min(HOOK, room);
                    beam(line, x - half, to, offset, side * thickness, chord);
                } else if (beam == Beam.BACKWARD_HOOK) {
                    double room = i > 0 ? (x - stemX(group.get(i - 1))) / 2 : HOOK;
                    double from = x - Math.min(HOOK, room);
                    beam(line, from, x + half, offset, side * thickness, chord);
                }
            }
        }
    }

    /** A beam whose outer edge lies on the line of tips, moved inwards by an offset. */
    private void beam(
            MeasureEngraver.StemLine line,
            double from,
            double to,
            double offset,
            double inwards,
            Chord chord) {
        double y1 = line.at(from) + offset;
        double y2 = line.at(to) + offset;
        signs.polygon(
                Kind.BEAM,
                List.of(
                        new Point2D.Double(from, y1),
                        new Point2D.Double(to, y2),
                        new Point2D.Double(to, y2 - inwards),
                        new Point2D.Double(from, y1 - inwards)),
                Owner.of(measure, voice, chord.tick()));
    }

    private MeasureEngraver.StemLine line(List<Chord> group) {
        Chord first = group.get(0);
        Chord last = group.get(group.size() - 1);
        boolean up = shape.shape(first).up();
        double side = up ? -1 : 1;
        double x0 = stemX(first);
        double width = Math.max(0.1, stemX(last) - x0);
        double y0 = shape.shape(first).tipSideY();
        double y1 = shape.shape(last).tipSideY();
        double outermost = up ? Math.min(y0, y1) : Math.max(y0, y1);
        boolean innerBeyond =
                group.subList(1, group.size() - 1).stream()
                        .mapToDouble(c -> shape.shape(c).tipSideY())
                        .anyMatch(y -> side * y >= side * outermost);
        double rise = innerBeyond ? 0 : (y1 - y0) / 2;
        double most = Math.min(MOST_RISE, STEEPEST * width);
        rise = Math.max(-most, Math.min(most, rise));
        // Quarter spaces, so that edges meet the staff lines cleanly.
        rise = Math.rint(rise * 4) / 4;
        double slope = rise / width;
        int levels = group.stream().mapToInt(c -> c.beams().size()).max().orElse(1);
        double length = Measures.STEM + Math.max(0, levels - 2) * Measures.STEM_PER_BEAM;
        double y = up ? Double.MAX_VALUE : -Double.MAX_VALUE;
        for (Chord chord : group) {
            double x = stemX(chord);
            double tip = shape.shape(chord).tipSideY() + side * length;
            if (shape.grace(chord).isPresent()) {
                tip =
                        up
                                ? Math.min(tip, overGrace(chord, levels, side))
                                : Math.max(tip, overGrace(chord, levels, side));
            }
            double atFirst = tip - slope * (x - x0);
            y = up ? Math.min(y, atFirst) : Math.max(y, atFirst);
        }
        y = clearOfOthers(y, x0, width, slope, levels, up);
        if (side * y < 1.0) {
            // Beams of notes far off the staff still reach its middle.
            y = side;
        }
        if (voice > 2) {
            // A third voice beams beyond the first, level and clear of it.
            double inwards = 1 + (levels - 1) * Measures.STEM_PER_BEAM;
            double beyond =
                    up
                            ? Math.min(y, signs.top(x0, x0 + width, 0) - inwards)
                            : Math.max(y, signs.bottom(x0, x0 + width, 0) + inwards);
            return new MeasureEngraver.StemLine(x0, beyond, 0);
        }
        return new MeasureEngraver.StemLine(x0, Math.rint(y * 4) / 4, slope);
    }

    /** Moves the beams beyond heads of the other voice that lie between their stems. */
    private double clearOfOthers(
            double y, double x0, double width, double slope, int levels, boolean up) {
        double inwards = 0.5 + (levels - 1) * Measures.STEM_PER_BEAM + CLEAR;
        double moved = y;
        for (PlacedSign sign : signs.signs()) {
            boolean other =
                    sign.owner().measure() == measure
                            && sign.owner().voice() != voice
                            && OBSTACLES.contains(sign.kind());
            Rectangle2D box = sign.bounds();
            if (other && box.getMaxX() > x0 - CLEAR && box.getMinX() < x0 + width + CLEAR) {
                double atSign = Math.max(0, Math.min(width, box.getCenterX() - x0)) * slope;
                moved =
                        up
                                ? Math.min(moved, box.getMinY() - inwards - atSign)
                                : Math.max(moved, box.getMaxY() + inwards - atSign);
            }
        }
        return moved;
    }

    /** Where the outer beam must lie to clear the stems of grace notes under it. */
    private double overGrace(Chord chord, int levels, double side) {
        double farthest =
                chord.gracedHeads().stream()
                        .mapToDouble(h -> side * ChordShape.yOf(h.place(), clef))
                        .max()
                        .orElse(0);
        return side
                * (farthest
                        + Measures.GRACE_STEM
                        + 0.3
                        + 0.5
                        + (levels - 1) * Measures.STEM_PER_BEAM);
    }
}
