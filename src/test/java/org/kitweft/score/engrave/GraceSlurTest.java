package org.kitweft.score.engrave;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;

/** Where slurs stand is common practice, no source. That they meet nothing: CollisionTest. */
class GraceSlurTest {
    /** Staff spaces: under a sharp, which reaches almost a space beyond the head. */
    private static final double DEEPEST = 1.7;

    private final Engraver engraver = new Engraver(Fonts.load());

    /** The signs of one line, the first stroke on a sound of its own. */
    private List<PlacedSign> signs(String kit, String sticking, String first) {
        Recipe plain = Recipe.plain(Sticking.parse(sticking), BuiltInKits.load(kit));
        Recipe recipe = plain.with(plain.voicing().withStroke(0, plain.kit().find(first)));
        return engraver.engrave(
                        Notation.of(recipe.weave(), NotationOptions.DEFAULT),
                        EngraveSettings.ofWidth(160))
                .systems()
                .get(0)
                .signs();
    }

    private static List<PlacedSign> of(List<PlacedSign> signs, Kind kind, Owner owner) {
        return signs.stream()
                .filter(s -> s.kind() == kind)
                .filter(s -> s.owner().measure() == owner.measure())
                .filter(s -> s.owner().voice() == owner.voice())
                .filter(s -> s.owner().tick() == owner.tick())
                .toList();
    }

    /** Flams, drags, an accent, a ghost note, feet below; stems down, sharps. */
    @ParameterizedTest
    @CsvSource({
        "five-piece, lR K llR L >rL K - rrL lR -, snare",
        "five-piece, lR K llR L >rL K - rrL (lR) -, floor-tom",
        "marimba, lR L >rrL R, c-5",
        "marimba, lR L >rrL R, c-sharp-6",
        "marimba, llR L >rL R, g-sharp-4",
    })
    void leadsFromTheFirstGraceNoteToItsNoteOnTheHeadsSide(
            String kit, String sticking, String first) {
        List<PlacedSign> signs = signs(kit, sticking, first);
        List<PlacedSign> slurs = signs.stream().filter(s -> s.kind() == Kind.SLUR).toList();
        long graced =
                signs.stream()
                        .filter(s -> s.kind() == Kind.GRACE_HEAD)
                        .map(PlacedSign::owner)
                        .distinct()
                        .count();
        assertThat(graced).isPositive();
        assertThat(slurs).hasSize((int) graced);
        for (PlacedSign slur : slurs) {
            Rectangle2D box = slur.bounds();
            Rectangle2D grace = of(signs, Kind.GRACE_HEAD, slur.owner()).get(0).bounds();
            Rectangle2D head = of(signs, Kind.HEAD, slur.owner()).get(0).bounds();
            Rectangle2D stem = of(signs, Kind.STEM, slur.owner()).get(0).bounds();
            assertThat(box.getMinX()).isBetween(grace.getMinX(), grace.getMaxX());
            assertThat(box.getMaxX()).isBetween(head.getMinX(), head.getMaxX());
            boolean up = stem.getCenterY() < head.getCenterY();
            if (up) {
                assertThat(box.getMinY()).isGreaterThan(grace.getMaxY());
                assertThat(box.getMaxY()).isBetween(head.getMaxY(), head.getMaxY() + DEEPEST);
            } else {
                assertThat(box.getMaxY()).isLessThan(grace.getMinY());
                assertThat(box.getMinY()).isBetween(head.getMinY() - DEEPEST, head.getMinY());
            }
        }
    }
}
