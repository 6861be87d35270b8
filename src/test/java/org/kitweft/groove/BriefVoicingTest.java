package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.RandomStickings;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke.Struck;

class BriefVoicingTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");

    @Test
    void aLetterWhoseStrokesAllGoToOneSoundGoesThereItself() {
        Recipe recipe = Recipe.plain(Sticking.parse(">RLR LL"), KIT);
        Voicing single = recipe.voicing();
        for (int stroke : List.of(0, 2)) {
            single = single.withStroke(stroke, KIT.find(stroke == 0 ? "crash" : "ride"));
        }
        Voicing brief = single.withStroke(1, KIT.find("high-tom")).briefly(recipe.sticking());
        LetterVoicing right = brief.letter(Letter.R).orElseThrow();
        assertThat(right.path()).containsExactly(KIT.find("ride"));
        assertThat(right.accents()).containsExactly(KIT.find("crash"));
        assertThat(brief.letter(Letter.L).orElseThrow().path())
                .as("two strokes of L stay on the snare")
                .containsExactly(KIT.find("snare"));
        assertThat(brief.strokes()).containsOnlyKeys(1);
    }

    @Test
    void soundsTheSameWhateverTheSticking() {
        SplittableRandom random = new SplittableRandom(11);
        int shorter = 0;
        for (Sticking sticking : RandomStickings.of(11, 500, 12).toList()) {
            Recipe recipe = Recipe.plain(sticking, KIT);
            Map<Letter, Map<Dynamic, SoundName>> there = new EnumMap<>(Letter.class);
            Voicing voicing = recipe.voicing();
            for (int stroke = 0; stroke < sticking.size(); stroke++) {
                Optional<Struck> struck = sticking.strokes().get(stroke).struck();
                if (struck.isPresent() && random.nextInt(40) > 0) {
                    Letter letter = struck.get().letter();
                    SoundName sound =
                            there.computeIfAbsent(letter, l -> new EnumMap<>(Dynamic.class))
                                    .computeIfAbsent(
                                            struck.get().dynamic(), d -> sound(letter, random));
                    voicing = voicing.withStroke(stroke, sound);
                }
            }
            Voicing brief = voicing.briefly(sticking);
            assertThat(heard(recipe.with(brief)))
                    .as("%s", sticking)
                    .isEqualTo(heard(recipe.with(voicing)));
            shorter += brief.strokes().size() < voicing.strokes().size() ? 1 : 0;
        }
        assertThat(shorter).isGreaterThan(100);
    }

    /** All of the hits but how their sounds were named. */
    private static List<String> heard(Recipe recipe) {
        return recipe.weave().hits().stream()
                .map(h -> h.start() + " " + h.limb() + " " + h.sound() + h.dynamic() + h.ornament())
                .toList();
    }

    private static SoundName sound(Letter letter, SplittableRandom random) {
        List<SoundName> sounds = KIT.soundsFor(Voicing.limbOf(letter, KIT));
        return sounds.get(random.nextInt(sounds.size()));
    }
}
