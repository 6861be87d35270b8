package org.kitweft.score.engrave;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.kitweft.kit.StaffPlace;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Accidental;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Head;
import org.kitweft.score.model.Sign;

/**
 * The heads of a chord and what stands beside them, relative to the chord's column: x = 0 is where
 * a plain head begins. Knows nothing of its neighbours; its stem's tip is decided with the beam.
 */
final class ChordShape {
    private static final double DOT_GAP = 0.35;
    private static final double ACCIDENTAL_GAP = 0.2;

    /** Parentheses and heads less than this apart in height stand beside each other. */
    private static final double PARENTHESIS_REACH = 1.25;

    private static final double PARENTHESIS_STEP = 0.5;

    /** One head, where it stands. */
    record PlacedHead(Head head, Glyph glyph, double x, double y) {}

    /** A glyph beside the heads. */
    record Beside(Kind kind, Glyph glyph, double scale, double x, double y) {}

    private final MusicFont font;
    private final Chord chord;
    private final boolean up;
    private final double shift;
    private final List<PlacedHead> heads = new ArrayList<>();
    private final List<Beside> beside = new ArrayList<>();
    private double left;
    private double right;

    /**
     * @param shift how far the whole chord stands to the right of its column, away from another
     *     voice
     */
    ChordShape(MusicFont font, Chord chord, Clef clef, boolean up, double shift) {
        this.font = font;
        this.chord = chord;
        this.up = up;
        this.shift = shift;
        placeHeads(clef);
        left = heads.stream().mapToDouble(PlacedHead::x).min().orElse(0);
        right = heads.stream().mapToDouble(h -> h.x + width(h.glyph)).max().orElse(0);
        placeParentheses();
        if (chord.signs().contains(Sign.BUZZ)) {
            double half = font.bounds(Glyph.BUZZ).getMaxX();
            right = Math.max(right, stemX() + half);
            left = Math.min(left, stemX() - half);
        }
        placeAccidentals();
        placeDots();
        if (needsFlag()) {
            double flag = font.bounds(HeadGlyphs.flag(chord.value(), up)).getMaxX();
            right = Math.max(right, stemX() + flag);
        }
        placeLedgerRoom();
    }

    /** Where a place lies: half a space for each step of the scale. */
    static double yOf(StaffPlace place, Clef clef) {
        return (clef.middleLine() - place.diatonic()) / 2.0;
    }

    private void placeHeads(Clef clef) {
        List<Head> order = new ArrayList<>(chord.heads());
        if (!up) {
            Collections.reverse(order);
        }
        double stem = stemX();
        List<List<Double>> taken = new ArrayList<>();
        for (Head head : order) {
            double y = yOf(head.place(), clef);
            int column = 0;
            while (column < taken.size()
                    && taken.get(column).stream().anyMatch(other -> Math.abs(other - y) < 0.9)) {
                column++;
            }
            while (taken.size() <= column) {
                taken.add(new ArrayList<>());
            }
            taken.get(column).add(y);
            Glyph glyph = HeadGlyphs.head(head.notehead(), chord.value());
            double half = font.recommended("stemThickness") / 2;
            // Beside a head of its own line or space a head stays clear of the stem, too.
            boolean unison = column > 0 && taken.get(column - 1).contains(y);
            double clear = unison ? 2 * half + 0.04 : 0;
            double headX;
            if (up) {
                headX =
                        column == 0
                                ? stem + half - stemSide(glyph)
                                : stem - half + clear + (column - 1) * 1.25;
            } else {
                headX =
                        column == 0
                                ? stem - half
                                : stem + half - clear - width(glyph) - (column - 1) * 1.25;
            }
            heads.add(new PlacedHead(head, glyph, headX, y));
        }
    }

    /** How far right of its origin the stem of a glyph ends, stem up. */
    private double stemSide(Glyph glyph) {
        return font.anchor(glyph, "stemUpSE").map(Point2D::getX).orElse(width(glyph));
    }

    private double width(Glyph glyph) {
        return font.bounds(glyph).getMaxX();
    }

    /** Around each ghost note, beyond stem, neighbouring heads and their parentheses. */
    private void placeParentheses() {
        double stemHalf = font.recommended("stemThickness") / 2;
        Rectangle2D left0 = font.bounds(Glyph.PARENTHESIS_LEFT);
        Rectangle2D right0 = font.bounds(Glyph.PARENTHESIS_RIGHT);
        List<PlacedHead> done = new ArrayList<>();
        for (PlacedHead h : heads) {
            if (!h.head.ghost()) {
                continue;
            }
            List<PlacedHead> near =
                    heads.stream().filter(o -> Math.abs(o.y - h.y) < PARENTHESIS_REACH).toList();
            double room = (h.glyph == Glyph.HEAD_BLACK && near.size() == 1) ? 0.06 : 0.2;
            double from = near.stream().mapToDouble(PlacedHead::x).min().orElse(h.x);
            double to = near.stream().mapToDouble(o -> o.x + width(o.glyph)).max().orElse(h.x);
            if (up && Math.abs(to - stemX()) < 0.3) {
                to = Math.max(to, stemX() + stemHalf);
            }
            if (!up && Math.abs(from - stemX()) < 0.3) {
                from = Math.min(from, stemX() - stemHalf - 0.1);
            }
            long nested = done.stream().filter(o -> Math.abs(o.y - h.y) < 1.5).count();
            double out = room + nested * PARENTHESIS_STEP;
            done.add(h);
            double tuck = near.size() == 1 && h.glyph == Glyph.HEAD_BLACK && up ? 0.1 : 0;
            add(Kind.PARENTHESIS, Glyph.PARENTHESIS_LEFT, from - out - left0.getMaxX() + tuck, h.y);
            add(Kind.PARENTHESIS, Glyph.PARENTHESIS_RIGHT, to + out + 0.04 - right0.getMinX(), h.y);
        }
    }

    private void placeAccidentals() {
        double column = left;
        double lastY = Double.MAX_VALUE;
        double lastX = left;
        for (PlacedHead h : heads) {
            if (h.head.accidental().isEmpty()) {
                continue;
            }
            Glyph glyph =
                    h.head.accidental().get() == Accidental.SHARP ? Glyph.SHARP : Glyph.NATURAL;
            double from = Math.abs(lastY - h.y) < 3 ? lastX : column;
            double accidentalX = from - ACCIDENTAL_GAP - width(glyph);
            add(Kind.ACCIDENTAL, glyph, accidentalX, h.y);
            lastX = accidentalX;
            lastY = h.y;
        }
    }

    private void placeDots() {
        double from = right;
        boolean anyOnLine = heads.stream().anyMatch(h -> Math.abs(h.y - Math.rint(h.y)) < 0.01);
        if (needsFlag() && up && anyOnLine) {
            // A dot raised off its line meets the flag's end.
            double flag = font.bounds(HeadGlyphs.flag(chord.value(), true)).getMaxX();
            from = Math.max(from, stemX() + flag - 0.2);
        }
        List<Double> taken = new ArrayList<>();
        for (PlacedHead h : heads) {
            boolean onLine = Math.abs(h.y - Math.rint(h.y)) < 0.01;
            double y = onLine ? h.y + (up ? -0.5 : 0.5) : h.y;
            if (chord.dots() == 0 || taken.contains(y)) {
                continue;
            }
            taken.add(y);
            double dotX = from + DOT_GAP;
            for (int dot = 0; dot < chord.dots(); dot++) {
                add(Kind.DOT, Glyph.DOT, dotX, y);
                dotX += 0.6;
            }
        }
    }

    private void placeLedgerRoom() {
        for (PlacedHead h : heads) {
            if (Math.abs(h.y) >= 3) {
                double reach = font.recommended("legerLineExtension") * 0.75;
                left = Math.min(left, h.x - reach);
                right = Math.max(right, h.x + width(h.glyph) + reach);
            }
        }
    }

    private void add(Kind kind, Glyph glyph, double atX, double atY) {
        beside.add(new Beside(kind, glyph, 1, atX, atY));
        left = Math.min(left, atX + font.bounds(glyph).getMinX());
        right = Math.max(right, atX + font.bounds(glyph).getMaxX());
    }

    /** Makes room for grace notes; their heads stand left of what is there so far. */
    GraceShape grace() {
        GraceShape grace = new GraceShape(font, this, chord.ornament().graceNotes());
        left = Math.min(left, grace.left());
        return grace;
    }

    boolean needsFlag() {
        return chord.value().flags() > 0 && chord.beams().isEmpty();
    }

    Chord chord() {
        return chord;
    }

    boolean up() {
        return up;
    }

    /** Where the stem is, its middle. */
    double stemX() {
        double half = font.recommended("stemThickness") / 2;
        return shift + (up ? font.bounds(Glyph.HEAD_BLACK).getMaxX() - half : half);
    }

    /** The middle of a plain head. */
    double middle() {
        return shift + font.bounds(Glyph.HEAD_BLACK).getMaxX() / 2;
    }

    List<PlacedHead> heads() {
        return heads;
    }

    List<Beside> beside() {
        return beside;
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    /** The head nearest the stem's tip. */
    double tipSideY() {
        return up
                ? heads.stream().mapToDouble(PlacedHead::y).min().orElse(0)
                : heads.stream().mapToDouble(PlacedHead::y).max().orElse(0);
    }

    /** Where the stem begins: at the anchor of the head farthest from its tip. */
    double stemStartY() {
        PlacedHead far =
                heads.stream()
                        .reduce((a, b) -> (up ? a.y >= b.y : a.y <= b.y) ? a : b)
                        .orElseThrow();
        double anchor =
                font.anchor(far.glyph, up ? "stemUpSE" : "stemDownNW")
                        .map(Point2D::getY)
                        .orElse(0.0);
        return far.y + anchor;
    }
}
