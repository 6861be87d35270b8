package org.kitweft.score.engrave;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.kitweft.score.RandomGrooves;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.Score;

/** No two signs of a line overlap but those that are made to. */
class CollisionTest {
    private static final int BARS = 1_000;

    /** Staff spaces: what outlines may touch by rounding. */
    private static final double TOUCH = 0.03;

    private static final Set<Kind> LINES = EnumSet.of(Kind.STAFF_LINE, Kind.LEDGER_LINE);

    /**
     * What is joined on purpose: stem to head, flag, beam, buzz; beams to stems; grace to grace.
     */
    private static final Set<Kind> STEMMED =
            EnumSet.of(Kind.STEM, Kind.HEAD, Kind.FLAG, Kind.BEAM, Kind.BUZZ, Kind.TIE);

    private static final Set<Kind> GRACE = EnumSet.of(Kind.GRACE_HEAD, Kind.GRACE_STEM);

    @Test
    void nothingOverlapsButByDesignOverAThousandBars() {
        Engraver engraver = new Engraver(Fonts.load());
        List<String> found = new ArrayList<>();
        int bars = 0;
        for (long seed = 0; bars < BARS; seed++) {
            Score score =
                    Notation.of(
                            RandomGrooves.of(seed),
                            NotationOptions.DEFAULT
                                    .withCounting(seed % 3 == 0)
                                    .withOneVoice(seed % 7 == 0));
            bars += score.measures().size();
            boolean crowded = score.measures().stream().anyMatch(m -> m.voices().size() > 2);
            EngravedScore engraved = engraver.engrave(score, EngraveSettings.ofWidth(420));
            for (EngravedSystem system : engraved.systems()) {
                for (String overlap : overlaps(engraver.fonts(), system, crowded)) {
                    found.add("seed " + seed + ": " + overlap);
                }
            }
        }
        assertThat(found).isEmpty();
    }

    private static List<String> overlaps(Fonts fonts, EngravedSystem system, boolean crowded) {
        List<String> found = new ArrayList<>();
        List<PlacedSign> signs = system.signs();
        for (int i = 0; i < signs.size(); i++) {
            for (int j = i + 1; j < signs.size(); j++) {
                PlacedSign one = signs.get(i);
                PlacedSign other = signs.get(j);
                if (touching(one, other)
                        && !byDesign(one, other, crowded)
                        && inked(fonts, one, other)) {
                    found.add(one.line() + " | " + other.line());
                }
            }
        }
        return found;
    }

    private static boolean touching(PlacedSign one, PlacedSign other) {
        Rectangle2D a = one.bounds();
        Rectangle2D b = other.bounds();
        return Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX()) > TOUCH
                && Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY()) > TOUCH;
    }

    private static boolean byDesign(PlacedSign one, PlacedSign other, boolean crowded) {
        Kind a = one.kind();
        Kind b = other.kind();
        if (LINES.contains(a) || LINES.contains(b)) {
            return true;
        }
        // The font's own digits of numerator and denominator touch; a bracket joins its hooks.
        if (a == b && (a == Kind.METER || (a == Kind.TUPLET_BRACKET && sameInstant(one, other)))) {
            return true;
        }
        boolean sameVoice =
                one.owner().measure() == other.owner().measure()
                        && one.owner().voice() == other.owner().voice();
        if (!sameVoice && (a == Kind.TIE || b == Kind.TIE)) {
            // Where voices cross, a tie of one passes through stems of the other.
            return true;
        }
        boolean sameChord = sameVoice && one.owner().tick() == other.owner().tick();
        if (sameVoice && STEMMED.contains(a) && STEMMED.contains(b)) {
            // Two heads of a second touch the one stem between them, so overlap by its width.
            return a != Kind.HEAD || b != Kind.HEAD || (sameChord && secondApart(one, other));
        }
        if (sameChord && GRACE.contains(a) && GRACE.contains(b)) {
            return true;
        }
        // Three figures in one hand's stems: those of the third cross the first one's beams.
        Set<Kind> stems = EnumSet.of(Kind.STEM, Kind.BEAM, Kind.FLAG);
        return crowded && (stems.contains(a) || stems.contains(b));
    }

    private static boolean secondApart(PlacedSign one, PlacedSign other) {
        double overlap =
                Math.min(one.bounds().getMaxX(), other.bounds().getMaxX())
                        - Math.max(one.bounds().getMinX(), other.bounds().getMinX());
        return Math.abs(one.y() - other.y()) == 0.5 && overlap < 0.13;
    }

    private static boolean sameInstant(PlacedSign one, PlacedSign other) {
        return one.owner().equals(other.owner());
    }

    private static boolean inked(Fonts fonts, PlacedSign one, PlacedSign other) {
        Area area = new Area(shape(fonts, one));
        area.intersect(new Area(shape(fonts, other)));
        Rectangle2D box = area.getBounds2D();
        return box.getWidth() > TOUCH && box.getHeight() > TOUCH;
    }

    private static Shape shape(Fonts fonts, PlacedSign sign) {
        if (sign.ink() instanceof Ink.OfGlyph glyph) {
            return new AffineTransform(glyph.scale(), 0, 0, glyph.scale(), sign.x(), sign.y())
                    .createTransformedShape(fonts.music().outline(glyph.glyph()));
        }
        if (sign.ink() instanceof Ink.OfShape shape) {
            return AffineTransform.getTranslateInstance(sign.x(), sign.y())
                    .createTransformedShape(shape.path());
        }
        return sign.bounds();
    }
}
