package org.kitweft.ui.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.Choices;
import org.kitweft.explore.role.Feature;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Role;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/** The list in the orders by role. */
class RankedListTest {
    private final SessionModel session = new SessionModel(Session.opening());
    private final Exploring exploring = new Exploring(session, Tasks.DIRECT);
    private final Later later = new Later();

    /** Work waits until a test lets it run: what happens between its slices can be seen. */
    private static final class Later implements Tasks {
        final Deque<Runnable> waiting = new ArrayDeque<>();

        @Override
        public <T> Running run(
                String name, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
            boolean[] stopped = new boolean[1];
            waiting.add(
                    () -> {
                        if (!stopped[0]) {
                            Tasks.DIRECT.run(name, work, done, failed);
                        }
                    });
            return () -> stopped[0] = true;
        }

        void one() {
            waiting.remove().run();
        }
    }

    @BeforeEach
    void fourDrums() {
        drums("RLRR");
    }

    private void drums(String sticking) {
        var kit = session.recipe().kit();
        Choices choices =
                Choices.NONE
                        .with("R=snare,high-tom,mid-tom,floor-tom", kit)
                        .with("L=snare,high-tom,mid-tom,floor-tom", kit);
        session.edit("Begin", session.session().typed(sticking).with(choices));
    }

    private Possibilities all() {
        return exploring.found().orElseThrow();
    }

    private double score(Variation variation, Role role, RoleWeights weights) {
        return RoleFit.of(all().recipe(variation).weave(), weights).of(role).value();
    }

    @Test
    void allOfASmallNumberAreRankedAndItSaysSo() {
        VariationList list = new VariationList(Tasks.DIRECT);
        list.show(exploring.found(), Order.BEST_FILL, RoleWeights.DEFAULT);
        assertThat(list.getSize()).isEqualTo(256);
        assertThat(list.search().words()).isEqualTo("exact: all 256 looked at");
        assertThat(list.search().canGoOn()).isFalse();
        List<Double> scores = new ArrayList<>();
        for (int row = 0; row < 256; row++) {
            Variation variation = list.getElementAt(row);
            double score = score(variation, Role.FILL, RoleWeights.DEFAULT);
            assertThat(list.score(row)).hasValue(score);
            assertThat(list.rowOf(variation)).isEqualTo(row);
            scores.add(-score);
        }
        assertThat(scores).isSorted();
    }

    @Test
    void itStopsGoesOnAndNeverClaimsMoreThanItLookedAt() {
        drums("RLRR LRLL RRLR LLRL");
        VariationList list = new VariationList(later);
        list.show(exploring.found(), Order.BEST_PUNCH, RoleWeights.DEFAULT);
        assertThat(list.search().isRunning()).isTrue();
        later.one();
        int looked = list.search().standing().looked();
        assertThat(looked).isPositive();
        assertThat(list.getSize()).isPositive();
        assertThat(list.search().words()).startsWith("best of the ").endsWith(" looked at");
        list.search().stop();
        later.one();
        assertThat(list.search().isRunning()).isFalse();
        assertThat(list.search().canGoOn()).isTrue();
        assertThat(later.waiting).isEmpty();
        looked = list.search().standing().looked();
        list.search().goOn();
        assertThat(list.search().isRunning()).isTrue();
        later.one();
        assertThat(list.search().standing().looked()).isGreaterThan(looked);
    }

    @Test
    void stoppingAndGoingOnAtOnceStartsNoSecondSearch() {
        drums("RLRR LRLL RRLR LLRL");
        VariationList list = new VariationList(later);
        list.show(exploring.found(), Order.BEST_PUNCH, RoleWeights.DEFAULT);
        list.search().stop();
        list.search().goOn();
        assertThat(later.waiting).hasSize(1);
    }

    @Test
    void anotherOrderDropsTheSearch() {
        drums("RLRR LRLL RRLR LLRL");
        VariationList list = new VariationList(later);
        list.show(exploring.found(), Order.BEST_TIME, RoleWeights.DEFAULT);
        later.one();
        list.show(exploring.found(), Order.NUMBER, RoleWeights.DEFAULT);
        int rows = list.getSize();
        while (!later.waiting.isEmpty()) {
            later.one();
        }
        assertThat(list.getSize()).isEqualTo(rows);
        assertThat(list.score(0)).isEmpty();
        assertThat(list.getElementAt(7).index()).isEqualTo(7);
    }

    @Test
    void theUsersWeightsRank() {
        RoleWeights own = RoleWeights.DEFAULT;
        for (Feature feature : Feature.values()) {
            own = own.with(Role.FILL, feature, feature == Feature.ROUND_THE_KIT ? -1 : 0);
        }
        VariationList list = new VariationList(Tasks.DIRECT);
        list.show(exploring.found(), Order.BEST_FILL, own);
        assertThat(list.getElementAt(0).sounds().stream().distinct())
                .as("nothing but staying in one place counts")
                .hasSize(1);
    }
}
