package org.kitweft.ui.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.Choices;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Place;
import org.kitweft.kit.Kit;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class ExploringTest {
    private final SessionModel session = new SessionModel(Session.opening());
    private final Kit kit = session.recipe().kit();
    private final Exploring exploring = new Exploring(session, Tasks.DIRECT);

    /** Eight strokes, four drums for each hand: 2 to the 8th, 4 squared, 4 to the 8th. */
    @BeforeEach
    void fourDrums() {
        Choices choices =
                Choices.NONE
                        .with("R=snare,high-tom,mid-tom,floor-tom", kit)
                        .with("L=snare,high-tom,mid-tom,floor-tom", kit);
        session.edit("Begin", session.session().typed("RLRR LRLL").with(choices));
    }

    private BigInteger total() {
        return exploring.found().orElseThrow().total();
    }

    @Test
    void withoutRulesAllWaysArePlayable() {
        assertThat(total()).isEqualTo(65536);
    }

    @Test
    void aPinOnOneStrokeLeavesAQuarter() {
        session.edit("Pin", session.session().pinned(4, kit.find("snare")));
        assertThat(total()).isEqualTo(16384);
        session.edit("Let go", session.session().pinned(4, kit.find("snare")));
        assertThat(total()).isEqualTo(65536);
    }

    @Test
    void contradictionsAreNamed() {
        session.edit(
                "Rules",
                session.session().with(List.of(new Rule.Reach(0), new Rule.Surfaces(3, 4))));
        assertThat(total()).isZero();
        assertThat(exploring.fault()).contains("reach 0 cm").contains("surfaces");
    }

    @Test
    void hearingAVariationIsNoNewQuestion() {
        Possibilities before = exploring.found().orElseThrow();
        new Audition(session, new Playhead()).hear(before, before.get(BigInteger.TEN));
        assertThat(session.recipe().voicing().strokes()).hasSize(8);
        assertThat(exploring.found()).containsSame(before);
    }

    @Test
    void whilePlayingTheNextVariationWaitsForTheBarLine() {
        Playhead playhead = new Playhead();
        Audition audition = new Audition(session, playhead);
        Possibilities all = exploring.found().orElseThrow();
        playhead.at(new Place(1, 3), List.of());
        audition.hear(all, all.get(BigInteger.ONE));
        audition.hear(all, all.get(BigInteger.TWO));
        playhead.at(new Place(1, 15), List.of());
        assertThat(session.recipe().voicing().strokes()).isEmpty();
        playhead.at(new Place(1, 16), List.of());
        assertThat(session.recipe()).isEqualTo(all.recipe(all.get(BigInteger.TWO)));
        session.undo();
        assertThat(session.recipe().voicing().strokes()).isEmpty();
    }

    @Test
    void theListByNumberHoldsThemAllAndMakesThemWhenAsked() {
        VariationList list = new VariationList(Tasks.DIRECT);
        list.show(exploring.found(), Order.NUMBER, RoleWeights.DEFAULT);
        assertThat(list.getSize()).isEqualTo(65536);
        assertThat(list.getElementAt(65535).index()).isEqualTo(65535);
    }

    @Test
    void theListByTravelGrowsAsItIsScrolledAndNeverDecreases() {
        VariationList list = new VariationList(Tasks.DIRECT);
        list.show(exploring.found(), Order.LEAST_TRAVEL, RoleWeights.DEFAULT);
        int first = list.getSize();
        list.seen(first - 1);
        assertThat(list.getSize()).isGreaterThan(2 * first);
        Possibilities all = exploring.found().orElseThrow();
        List<Double> travel = new ArrayList<>();
        for (int row = 0; row < list.getSize(); row++) {
            Variation variation = list.getElementAt(row);
            travel.add(all.travel(variation.sounds()).totalCm());
        }
        for (int row = 1; row < travel.size(); row++) {
            assertThat(travel.get(row)).isGreaterThanOrEqualTo(travel.get(row - 1) - 1e-6);
        }
    }

    @Test
    void noPossibilitiesAreAnEmptyList() {
        VariationList list = new VariationList(Tasks.DIRECT);
        list.show(Optional.empty(), Order.LEAST_TRAVEL, RoleWeights.DEFAULT);
        assertThat(list.getSize()).isZero();
    }
}
