package org.kitweft.ui.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class VoicingEditsTest {
    private final Kit kit = BuiltInKits.load("five-piece");
    private final Recipe recipe = Recipe.plain(Sticking.parse("RLRR LRLL K H"), kit);

    private Surface surface(String id) {
        return kit.surface(id).orElseThrow();
    }

    private static LetterVoicing voiced(Recipe recipe, Letter letter) {
        return recipe.voicing().letter(letter).orElseThrow();
    }

    @ParameterizedTest(name = "{0} on {1}: the {2} strikes {3}")
    @CsvSource(
            textBlock =
                    """
                    R, ride,      RIGHT_HAND, ride.bow
                    R, bass-drum, RIGHT_FOOT, bass-drum.head
                    R, hi-hat,    RIGHT_HAND, hi-hat.closed
                    H, hi-hat,    LEFT_FOOT,  hi-hat.foot
                    K, hi-hat,    LEFT_FOOT,  hi-hat.foot
                    K, snare,     RIGHT_HAND, snare.head
                    """)
    void aLetterIsPlacedWithALimbThatReachesTheSurface(
            Letter letter, String id, Limb limb, String sound) {
        Recipe placed = VoicingEdits.place(recipe, letter, surface(id), Target.ALL, false);
        assertThat(voiced(placed, letter).limb()).isEqualTo(limb);
        assertThat(voiced(placed, letter).path()).containsExactly(kit.find(sound));
    }

    @Test
    void anAddedPlaceJoinsThePathAndCanBeRemoved() {
        Recipe two = VoicingEdits.place(recipe, Letter.R, surface("ride"), Target.ALL, true);
        assertThat(voiced(two, Letter.R).path())
                .containsExactly(kit.find("snare"), kit.find("ride"));
        assertThat(VoicingEdits.removeTurn(two, Letter.R, Target.ALL, 1)).isEqualTo(recipe);
    }

    @Test
    void aLetterWhoseStrokesAllWentElsewhereOneByOneIsHeardWhereItIsPlaced() {
        Voicing elsewhere = recipe.voicing();
        for (int stroke : new int[] {0, 2, 3, 5}) {
            elsewhere = elsewhere.withStroke(stroke, kit.find(stroke == 0 ? "crash" : "ride"));
        }
        Recipe heard = recipe.with(elsewhere.withStroke(1, kit.find("high-tom")));
        Recipe right = VoicingEdits.place(heard, Letter.R, surface("hi-hat"), Target.ALL, false);
        assertThat(right.voicing().strokes()).containsOnlyKeys(1);
        Recipe left = VoicingEdits.place(heard, Letter.L, surface("hi-hat"), Target.ALL, false);
        assertThat(left.voicing().strokes()).as("L has strokes of its own").hasSize(5);
    }

    @Test
    void theLastPlaceOfAPathStays() {
        assertThat(VoicingEdits.removeTurn(recipe, Letter.R, Target.ALL, 0)).isEqualTo(recipe);
    }

    @Test
    void accentsCanBePlacedForThemselves() {
        Recipe accents =
                VoicingEdits.place(recipe, Letter.R, surface("crash"), Target.ACCENTS, false);
        assertThat(voiced(accents, Letter.R).path()).containsExactly(kit.find("snare"));
        assertThat(voiced(accents, Letter.R).accents()).containsExactly(kit.find("crash"));
    }

    @Test
    void theNextSoundComesRoundAndSkipsWhatTheLimbCannotStrike() {
        Recipe closed = VoicingEdits.place(recipe, Letter.R, surface("hi-hat"), Target.ALL, false);
        Recipe open = VoicingEdits.nextSound(closed, Letter.R, Target.ALL);
        assertThat(voiced(open, Letter.R).path()).containsExactly(kit.find("hi-hat.open"));
        assertThat(VoicingEdits.nextSound(open, Letter.R, Target.ALL)).isEqualTo(closed);
    }

    @Test
    void tacetTwiceIsAsBefore() {
        Recipe silent = VoicingEdits.toggleTacet(recipe, Letter.L);
        assertThat(silent.weave().hits())
                .noneMatch(hit -> hit.letter().equals(Optional.of(Letter.L)));
        assertThat(VoicingEdits.toggleTacet(silent, Letter.L)).isEqualTo(recipe);
    }

    @Test
    void placingATacetLetterLetsItSound() {
        Recipe silent = VoicingEdits.toggleTacet(recipe, Letter.L);
        Recipe placed = VoicingEdits.place(silent, Letter.L, surface("snare"), Target.ALL, false);
        assertThat(placed).isEqualTo(recipe);
    }

    @Test
    void handingOverGoesRoundAllFourLimbs() {
        Recipe now = recipe;
        List<Limb> limbs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            now = VoicingEdits.handOver(now, Letter.R, VoicingEdits.nextLimb(now, Letter.R));
            limbs.add(VoicingEdits.limb(now, Letter.R));
        }
        assertThat(limbs)
                .containsExactly(Limb.LEFT_HAND, Limb.RIGHT_FOOT, Limb.LEFT_FOOT, Limb.RIGHT_HAND);
    }

    @Test
    void aMovedStrokeComesBack() {
        SoundName crash = kit.find("crash");
        Recipe moved = StrokeEdits.moveStroke(recipe, 4, crash);
        assertThat(StrokeEdits.isMoved(moved, 4)).isTrue();
        assertThat(moved.weave().hits())
                .anyMatch(hit -> hit.sound().equals(crash) && hit.stroke().getAsInt() == 4);
        assertThat(StrokeEdits.returnStroke(moved, 4)).isEqualTo(recipe);
    }

    @Test
    void threeChangesOfDynamicComeRound() {
        Recipe now = recipe;
        for (int i = 0; i < 3; i++) {
            now = StrokeEdits.nextDynamic(now, 0);
        }
        assertThat(now).isEqualTo(recipe);
        assertThat(StrokeEdits.nextDynamic(recipe, 0).sticking().text()).startsWith(">R");
    }
}
