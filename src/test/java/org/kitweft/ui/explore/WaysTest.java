package org.kitweft.ui.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class WaysTest {
    private final SessionModel session = new SessionModel(Session.opening());
    private final Kit kit = session.recipe().kit();
    private final Exploring exploring = new Exploring(session, Tasks.DIRECT);

    private void fourDrums(String sticking) {
        Choices choices =
                Choices.NONE
                        .with("R=snare,high-tom,mid-tom,floor-tom", kit)
                        .with("L=snare,high-tom,mid-tom,floor-tom", kit);
        session.edit("Begin", session.session().typed(sticking).with(choices));
    }

    private static BigInteger of(Ways ways, int stroke, SoundName... sounds) {
        return ways.of(stroke, List.of(sounds)).orElseThrow();
    }

    /** 4^8 variations, a quarter of them on each drum. */
    @Test
    void withoutRulesEachDrumHasAQuarter() {
        fourDrums("RLRR LRLL");
        Ways ways = exploring.ways();
        assertThat(ways.total()).isEqualTo(65536);
        BigInteger snare = of(ways, 4, kit.find("snare"));
        assertThat(snare).isEqualTo(16384);
        assertThat(ways.share(snare)).isEqualTo(0.25);
        assertThat(ways.words(snare, "Snare"))
                .isEqualTo("16,384 of 65,536 remaining variations strike Snare here");
        assertThat(of(ways, 4, kit.find("snare"), kit.find("high-tom"))).isEqualTo(32768);
        assertThat(ways.words(of(ways, 4, kit.find("crash")), "Crash"))
                .isEqualTo("none of the 65,536 remaining variations strikes Crash here");
    }

    @Test
    void aPinTakesItsStrokeAndLeavesTheOthers() {
        fourDrums("RLRR LRLL");
        session.edit("Pin", session.session().pinned(4, kit.find("mid-tom")));
        Ways ways = exploring.ways();
        assertThat(of(ways, 4, kit.find("mid-tom"))).isEqualTo(ways.total()).isEqualTo(16384);
        assertThat(ways.words(ways.total(), "Mid tom"))
                .isEqualTo("all 16,384 remaining variations strike Mid tom here");
        assertThat(of(ways, 4, kit.find("snare"))).isZero();
        assertThat(of(ways, 0, kit.find("snare"))).isEqualTo(4096);
    }

    /** Against counting one by one. */
    @Test
    void underRulesTheNumbersAreThoseOfTheVariationsThemselves() {
        fourDrums("RL-RRL");
        session.edit(
                "Rules",
                session.session()
                        .with(
                                List.of(
                                        new Rule.Reach(50),
                                        Rule.NoCrossing.usual(),
                                        new Rule.Surfaces(2, 3),
                                        new Rule.Loop())));
        Possibilities all = exploring.found().orElseThrow();
        Ways ways = exploring.ways();
        assertThat(ways.byStroke().keySet()).containsExactlyInAnyOrder(0, 1, 3, 4, 5);
        for (int i = 0; i < all.strokes().size(); i++) {
            int place = i;
            Map<SoundName, Long> counted =
                    all.from(BigInteger.ZERO)
                            .collect(
                                    Collectors.groupingBy(
                                            v -> v.sounds().get(place), Collectors.counting()));
            for (SoundName sound : all.options().get(i)) {
                assertThat(of(ways, all.strokes().get(i), sound))
                        .isEqualTo(BigInteger.valueOf(counted.getOrDefault(sound, 0L)));
            }
        }
    }

    @Test
    void restsAndContradictionsHaveNone() {
        fourDrums("RL-RRL");
        assertThat(exploring.ways().of(2, List.of(kit.find("snare")))).isEmpty();
        session.edit(
                "Rules",
                session.session().with(List.of(new Rule.Reach(0), new Rule.Surfaces(4, 4))));
        assertThat(exploring.ways().of(0, List.of(kit.find("snare")))).isEqualTo(Optional.empty());
    }
}
