package org.kitweft.ui.groove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.kit.Kit;
import org.kitweft.ui.explore.Exploring;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class GridWaysTest {
    private final SessionModel session = new SessionModel(Session.opening());
    private final Kit kit = session.recipe().kit();
    private final Exploring exploring = new Exploring(session, Tasks.DIRECT);

    @BeforeEach
    void fourDrums() {
        Choices choices =
                Choices.NONE
                        .with("R=snare,high-tom,mid-tom,floor-tom", kit)
                        .with("L=snare,high-tom,mid-tom,floor-tom", kit);
        session.edit("Begin", session.session().typed("RL-R").with(choices));
    }

    private GridWays shading() {
        return new GridWays(GridModel.of(session.groove()), exploring.ways());
    }

    private int row(String sound) {
        return GridModel.of(session.groove()).rowOf(kit.find(sound)).orElseThrow();
    }

    @Test
    void everyPassOfTheStickingIsShadedAlike() {
        assertThat(shading().share(row("snare"), 1)).isEqualTo(0.25);
        assertThat(shading().share(row("snare"), 5)).isEqualTo(0.25);
        assertThat(shading().share(row("crash"), 1)).isZero();
        assertThat(shading().isEven(1)).isTrue();
        assertThat(shading().words(row("snare"), 1))
                .contains("16 of 64 remaining variations strike Snare here");
    }

    @Test
    void aRestIsNoQuestion() {
        assertThat(shading().share(row("snare"), 2)).isNaN();
        assertThat(shading().words(row("snare"), 2)).isEmpty();
    }

    @Test
    void aPinnedStrokeStandsOutAndNarrowsAtOnce() {
        new GridEdits(session).pinOn(GridModel.of(session.groove()), 1, row("mid-tom"));
        assertThat(session.session().rules()).containsExactly(new Rule.Pin(1, kit.find("mid-tom")));
        assertThat(session.recipe().voicing().strokes()).containsEntry(1, kit.find("mid-tom"));
        assertThat(exploring.found().orElseThrow().total()).isEqualTo(16);
        assertThat(shading().share(row("mid-tom"), 1)).isEqualTo(1);
        assertThat(shading().share(row("snare"), 1)).isZero();
        assertThat(shading().isEven(1)).isFalse();
        assertThat(shading().isEven(0)).isTrue();
        new GridEdits(session).pinOn(GridModel.of(session.groove()), 1, row("mid-tom"));
        assertThat(session.session().rules()).isEmpty();
    }

    @Test
    void aLoneStrokeIsPinnedWhereItIs() {
        GridEdits edits = new GridEdits(session);
        edits.pin(GridModel.of(session.groove()), 0);
        assertThat(edits.pinAt(GridModel.of(session.groove()), 4)).isPresent();
        edits.letGo(edits.pinAt(GridModel.of(session.groove()), 0).orElseThrow());
        assertThat(session.session().rules()).isEqualTo(List.of());
    }
}
