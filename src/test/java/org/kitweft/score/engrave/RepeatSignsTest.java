package org.kitweft.score.engrave;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;

/** How repeat signs look is common practice, no source. */
class RepeatSignsTest {
    /** Staff spaces: as after a bar line. */
    private static final double CLEAR = 0.85;

    private final Engraver engraver = new Engraver(Fonts.load());

    private static Groove groove(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), BuiltInKits.load(BuiltInKits.DEFAULT))
                .withBars(OptionalInt.of(4))
                .weave();
    }

    /** Three repeats: after the meter, after another repeat and, in narrow lines, after a clef. */
    private List<EngravedSystem> systems(double width) {
        Section one = new Section(Role.TIME, groove("RLRR LRLL"));
        Section other = new Section(Role.FILL, groove("RLRK"));
        return engraver.engrave(
                        Notation.of(
                                new Phrase(List.of(one, other, one)),
                                NotationOptions.DEFAULT.withFoldRepeats(true)),
                        EngraveSettings.ofWidth(width))
                .systems();
    }

    private static List<Rectangle2D> boxes(EngravedSystem system, Kind kind) {
        return system.signs().stream()
                .filter(s -> s.kind() == kind)
                .map(PlacedSign::bounds)
                .sorted(Comparator.comparingDouble(Rectangle2D::getMinX))
                .toList();
    }

    @Test
    void notesStandClearOfTheDotsOnBothSides() {
        for (double width : new double[] {70, 110, 300}) {
            for (EngravedSystem system : systems(width)) {
                List<Rectangle2D> dots = boxes(system, Kind.REPEAT_DOT);
                assertThat(dots).hasSize(4 * system.measures());
                for (Rectangle2D dot : dots) {
                    assertThat(boxes(system, Kind.HEAD))
                            .as("width %s", width)
                            .allMatch(
                                    head ->
                                            head.getMinX() >= dot.getMaxX() + CLEAR
                                                    || head.getMaxX() <= dot.getMinX() - CLEAR);
                    assertThat(boxes(system, Kind.METER))
                            .allMatch(digit -> digit.getMaxX() <= dot.getMinX() - CLEAR);
                }
            }
        }
    }

    @Test
    void whereRepeatsMeetOneThickLineEndsTheOneAndBeginsTheOther() {
        EngravedSystem system = systems(300).get(0);
        assertThat(system.measures()).isEqualTo(3);
        List<Rectangle2D> lines = boxes(system, Kind.BAR_LINE);
        double thick = engraver.fonts().music().recommended("thickBarlineThickness");
        assertThat(lines.stream().map(line -> line.getWidth() > thick - 0.01))
                .as("thick lines from left to right")
                .containsExactly(true, false, false, true, false, false, true, false, false, true);
        for (int i = 1; i < lines.size(); i++) {
            assertThat(lines.get(i).getMinX()).isGreaterThan(lines.get(i - 1).getMaxX() + 0.3);
        }
    }

    /** Its strokes would blur with the lines elsewhere. */
    @Test
    void theZOfABuzzStandsOverAStaffLineClearOfHeadAndBeam() {
        List<PlacedSign> signs =
                engraver.engrave(
                                Notation.of(
                                        groove("Rz - - - Lz - R - Lz Rz L R L - Rz"),
                                        NotationOptions.DEFAULT),
                                EngraveSettings.ofWidth(300))
                        .systems()
                        .get(0)
                        .signs();
        List<PlacedSign> buzzes = signs.stream().filter(s -> s.kind() == Kind.BUZZ).toList();
        assertThat(buzzes).hasSizeGreaterThan(4);
        for (PlacedSign buzz : buzzes) {
            assertThat(buzz.y()).isEqualTo(-2);
            assertThat(signs)
                    .filteredOn(s -> s.kind() == Kind.HEAD || s.kind() == Kind.BEAM)
                    .noneMatch(s -> s.bounds().intersects(grown(buzz.bounds())));
        }
    }

    private static Rectangle2D grown(Rectangle2D box) {
        return new Rectangle2D.Double(
                box.getX(), box.getY() - 0.1, box.getWidth(), box.getHeight() + 0.2);
    }
}
