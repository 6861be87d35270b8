package org.kitweft.ui.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.Choices;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.Session;

class SelectedTest {
    private final Recipe opening = Session.opening().recipe();
    private final Kit kit = opening.kit();

    private Possibilities possibilities(String sticking, Grid grid, List<Rule> rules) {
        Sticking read = Sticking.parse(sticking);
        Recipe recipe = opening.with(read).with(grid);
        return Possibilities.of(recipe, Choices.everything(read, kit, recipe.voicing()), rules);
    }

    private String way(Possibilities all, String... sounds) {
        List<SoundName> found = Stream.of(sounds).map(kit::find).toList();
        Variation variation = new Variation(all.indexOf(found), found);
        return Selected.of(all, variation, RoleWeights.DEFAULT).way();
    }

    @Test
    void namesTheWayOfEachLimbAndTheMoveThatLimits() {
        Possibilities all = possibilities("RRLL", Grid.SIXTEENTHS, List.of());
        double far = kit.surfaceOf(kit.find("snare")).distanceTo(kit.surfaceOf(kit.find("ride")));
        assertThat(way(all, "snare", "ride", "snare", "snare"))
                .contains("travels RH %d cm, LH 0 cm; to about ".formatted(Math.round(far)))
                .endsWith("bpm, limited by RH: Snare to Ride, strokes 1 to 2.");
    }

    @Test
    void restsAreCountedAsSteps() {
        Possibilities all = possibilities("R--R L---", Grid.SIXTEENTHS, List.of());
        assertThat(way(all, "snare", "ride", "snare"))
                .endsWith("limited by RH: Snare to Ride, strokes 1 to 4.");
    }

    @Test
    void onRepeatTheMoveGoesBackToTheStart() {
        Possibilities all = possibilities("RLLR", Grid.SIXTEENTHS, List.of(new Rule.Loop()));
        assertThat(way(all, "snare", "snare", "snare", "ride"))
                .endsWith("limited by RH: Ride to Snare, strokes 4 to 1 again.");
    }

    @Test
    void swungStepsKeepTheirNumbers() {
        Possibilities all =
                possibilities("RLRLRLLR", Grid.SIXTEENTHS.withSwing(66), List.of(new Rule.Loop()));
        assertThat(way(all, "snare", "snare", "snare", "snare", "ride", "snare", "snare", "ride"))
                .endsWith("limited by RH: Ride to Snare, strokes 8 to 1 again.");
    }

    @Test
    void aSingleStrokeHasNoLimit() {
        Possibilities all = possibilities("R", Grid.SIXTEENTHS, List.of());
        assertThat(way(all, "snare")).endsWith("travels RH 0 cm; no move limits its tempo.");
    }

    @Test
    void theScoresAreThoseOfTheGrooveThatIsHeard() {
        Possibilities all = possibilities("RLRR", Grid.SIXTEENTHS, List.of());
        Variation variation = all.get(BigInteger.TEN);
        assertThat(Selected.of(all, variation, RoleWeights.DEFAULT).fit())
                .isEqualTo(RoleFit.of(all.recipe(variation).weave()));
    }
}
