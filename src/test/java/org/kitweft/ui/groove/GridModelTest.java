package org.kitweft.ui.groove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class GridModelTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    private Recipe recipe(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), kit);
    }

    @Test
    void rowsStandInStaffOrderAndThePedalHasItsOwn() {
        assertThat(GridModel.of(recipe("RL").weave()).rows())
                .extracting(GridRow::label)
                .containsExactly(
                        "Crash",
                        "Hi-hat",
                        "Ride",
                        "High tom",
                        "Mid tom",
                        "Snare",
                        "Floor tom",
                        "Bass drum",
                        "Hi-hat foot");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani"})
    void everySoundOfEveryKitHasExactlyOneRow(String name) {
        Kit any = BuiltInKits.load(name);
        List<GridRow> rows = GridRow.of(any);
        assertThat(rows.stream().flatMap(row -> row.sounds().stream()))
                .containsExactlyInAnyOrderElementsOf(any.soundNames());
    }

    @Test
    void everyHitHasAMark() {
        Groove groove = recipe(">R(L)RR LRL- KH").weave();
        assertThat(GridModel.of(groove).marks())
                .extracting(GridMark::hit)
                .containsExactlyElementsOf(groove.hits());
    }

    /** Against the weaver, which decides where strokes lie: two ways to the same answer. */
    @ParameterizedTest(name = "{0}, over the bar {1}")
    @CsvSource({
        "RLRRL, true",
        "RLRRL, false",
        "RLR, true",
        "RLRRLRLLRLRRLRLLRL, false",
        "RL, true"
    })
    void strokesLieWhereTheWeaverPutsThem(String sticking, boolean over) {
        Groove groove = recipe(sticking).with(Grid.SIXTEENTHS.withOverTheBar(over)).weave();
        GridModel model = GridModel.of(groove);
        for (Hit hit : groove.hits()) {
            if (hit.source() == HitSource.STROKE) {
                assertThat(model.strokeAt(model.column(hit.place()))).isEqualTo(hit.stroke());
            }
        }
        assertThat(IntStream.range(0, model.columns()).mapToObj(model::strokeAt))
                .allMatch(OptionalInt::isPresent);
    }

    @Test
    void tripletsOverSixteenthsLieBetweenTheColumns() {
        Recipe layered =
                recipe("RL")
                        .with(
                                recipe("RL")
                                        .voicing()
                                        .withLayers(
                                                List.of(
                                                        new Layer(
                                                                Limb.RIGHT_FOOT,
                                                                kit.find("bass-drum"),
                                                                3,
                                                                Figure.parse("x")))));
        assertThat(GridModel.of(layered.weave()).marks())
                .filteredOn(mark -> mark.layer().isPresent())
                .extracting(GridMark::column)
                .startsWith(0.0, 4.0 / 3, 8.0 / 3, 4.0);
    }

    @Test
    void aConflictIsMarkedAtItsHits() {
        Recipe impossible = recipe("RL");
        impossible = impossible.with(impossible.voicing().withStroke(0, kit.find("hi-hat.foot")));
        GridModel model = GridModel.of(impossible.weave());
        assertThat(model.conflictsAt(0)).hasSize(1);
        assertThat(model.marks().get(0).conflicts()).hasSize(1);
        assertThat(model.conflictsAt(1)).isEmpty();
    }

    @Test
    void aStrokeMovedByKeysSkipsRowsOutOfReachAndCanComeBack() {
        SessionModel session = new SessionModel(Session.opening().with(recipe("RLRR LRLL")));
        GridEdits edits = new GridEdits(session);
        GridModel model = GridModel.of(session.groove());
        int below = edits.nextRow(model, 0, 1).orElseThrow();
        assertThat(model.rows().get(below).label()).isEqualTo("Floor tom");
        edits.move(model, 0, below);
        GridModel moved = GridModel.of(session.groove());
        assertThat(edits.nextRow(moved, 0, 1)).as("no hand reaches the pedals").isEmpty();
        edits.giveBack(moved, 0);
        assertThat(session.recipe()).isEqualTo(recipe("RLRR LRLL"));
    }

    @Test
    void aLayersStepGoesThroughItsDynamics() {
        SessionModel session =
                new SessionModel(
                        Session.opening()
                                .with(
                                        recipe("RL")
                                                .with(
                                                        recipe("RL")
                                                                .voicing()
                                                                .withLayers(
                                                                        List.of(
                                                                                new Layer(
                                                                                        Limb
                                                                                                .RIGHT_FOOT,
                                                                                        kit.find(
                                                                                                "bass-drum"),
                                                                                        4,
                                                                                        Figure
                                                                                                .parse(
                                                                                                        "x - x -")))))));
        GridModel model = GridModel.of(session.groove());
        int row = model.rowOf(kit.find("bass-drum")).orElseThrow();
        new GridEdits(session).nextDynamic(model, row, 2);
        assertThat(session.recipe().voicing().layers().get(0).figure().text())
                .isEqualTo("x - >x -");
        assertThat(session.recipe().sticking().letters()).containsExactly(Letter.R, Letter.L);
    }
}
