package org.kitweft.score.engrave;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;

class EngravedScoreTest {
    private final Engraver engraver = new Engraver(Fonts.load());

    private static Groove groove(String sticking, String kit, Grid grid, int bars) {
        return Recipe.plain(Sticking.parse(sticking), BuiltInKits.load(kit))
                .with(grid)
                .withBars(OptionalInt.of(bars))
                .weave();
    }

    private EngravedScore engraved(Groove groove, NotationOptions options, double width) {
        return engraver.engrave(Notation.of(groove, options), EngraveSettings.ofWidth(width));
    }

    /** To renew a golden file, print {@code lines} and look at the difference with care. */
    @ParameterizedTest
    @CsvSource({
        "paradiddle, five-piece, 4, >RLRR (L)RLzK",
        "flams, five-piece, 3, lR L llR rL - K",
        "bars, marimba, 4, R L - R B - L -",
    })
    void placesItsSignsAsInTheGoldenFile(String name, String kit, int steps, String sticking)
            throws IOException {
        Grid grid = Grid.SIXTEENTHS.withStepsPerBeat(steps).withMeter(new Meter(2, 4));
        EngravedScore score =
                engraved(
                        groove(sticking, kit, grid, 1),
                        NotationOptions.DEFAULT.withCounting(true),
                        60);
        String lines =
                score.systems().stream()
                        .flatMap(system -> system.signs().stream())
                        .map(PlacedSign::line)
                        .collect(Collectors.joining("\n", "", "\n"));
        assertThat(lines).isEqualTo(golden(name));
    }

    private static String golden(String name) throws IOException {
        try (InputStream in = EngravedScoreTest.class.getResourceAsStream(name + ".golden.txt")) {
            return new String(
                    Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void fillsItsLinesToTheMarginAndBreaksAtBars() {
        EngravedScore score =
                engraved(
                        groove("RLRR LRLL", "five-piece", Grid.SIXTEENTHS, 12),
                        NotationOptions.DEFAULT,
                        110);
        assertThat(score.systems().size()).isGreaterThan(2);
        assertThat(score.systems()).allSatisfy(s -> assertThat(s.width()).isBetween(100.0, 110.01));
        assertThat(score.systems().stream().mapToInt(EngravedSystem::measures).sum()).isEqualTo(12);
    }

    @Test
    void pointingAtAHeadFindsItsHit() {
        Groove groove = groove(">RLRR (L)RLK", "five-piece", Grid.SIXTEENTHS, 2);
        EngravedScore score = engraved(groove, NotationOptions.DEFAULT, 150);
        for (EngravedSystem system : score.systems()) {
            for (PlacedSign sign : system.signs()) {
                if (sign.kind() == Kind.HEAD) {
                    assertThat(system.hitAt(sign.bounds().getCenterX(), sign.bounds().getCenterY()))
                            .isEqualTo(sign.owner().hit());
                }
            }
            assertThat(system.hitAt(-50, -50)).isEqualTo(Optional.empty());
        }
    }

    @Test
    void playheadStandsOnTheHeadThatIsStruckThen() {
        Groove groove = groove("RLRR LRLL", "five-piece", Grid.SIXTEENTHS, 3);
        EngravedScore score = engraved(groove, NotationOptions.DEFAULT, 90);
        groove.hits()
                .forEach(
                        hit -> {
                            EngravedScore.Playhead at = score.playhead(hit.written());
                            assertThat(score.systems().get(at.system()).signs())
                                    .anyMatch(
                                            s ->
                                                    s.owner().hit().equals(Optional.of(hit))
                                                            && s.bounds().getMinX() <= at.x()
                                                            && s.bounds().getMaxX() >= at.x());
                        });
    }

    @Test
    void playheadComesBackWhereBarsAreRepeated() {
        Groove groove = groove("RLRR LRLL", "five-piece", Grid.SIXTEENTHS, 3);
        EngravedScore score = engraved(groove, NotationOptions.DEFAULT.withFoldRepeats(true), 90);
        long bar = groove.grid().meter().barTicks();
        assertThat(score.score().measures()).hasSize(1);
        assertThat(score.playhead(2 * bar + 4200)).isEqualTo(score.playhead(4200));
    }
}
