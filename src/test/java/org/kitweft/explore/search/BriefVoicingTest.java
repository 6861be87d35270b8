package org.kitweft.explore.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class BriefVoicingTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    @Test
    void weavesToTheSame() {
        RandomRecipes recipes = new RandomRecipes(5);
        int changed = 0;
        for (int i = 0; i < 300; i++) {
            Recipe recipe = recipes.next(12);
            Recipe brief = BriefVoicing.of(recipe);
            assertThat(brief.weave().hits()).isEqualTo(recipe.weave().hits());
            changed += brief.equals(recipe) ? 0 : 1;
        }
        assertThat(changed).isGreaterThan(50);
    }

    @Test
    void aPathIsWrittenUntilItComesRoundAndNothingForAccentsThatAreNotThere() {
        Recipe recipe = Recipe.plain(Sticking.parse("R (R) L"), kit);
        LetterVoicing voiced =
                new LetterVoicing(
                        Limb.RIGHT_HAND,
                        List.of(
                                kit.find("ride"),
                                kit.find("snare"),
                                kit.find("ride"),
                                kit.find("snare")),
                        List.of(kit.find("crash")),
                        List.of(kit.find("snare"), kit.find("snare"), kit.find("snare")),
                        List.of(new Doubling(Limb.RIGHT_FOOT, kit.find("bass-drum"), true)),
                        false);
        Recipe brief = BriefVoicing.of(recipe.with(recipe.voicing().with(Letter.R, voiced)));
        assertThat(brief.voicing().letter(Letter.R).orElseThrow())
                .isEqualTo(
                        new LetterVoicing(
                                Limb.RIGHT_HAND,
                                List.of(kit.find("ride"), kit.find("snare")),
                                List.of(),
                                List.of(kit.find("snare")),
                                List.of(),
                                false));
    }
}
