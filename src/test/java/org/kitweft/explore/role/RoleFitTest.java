package org.kitweft.explore.role;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.UnknownNameException;
import org.kitweft.pattern.Catalogue;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class RoleFitTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    /**
     * Common practice, no source: eighths on the hi-hat, snare on 2 and 4, bass drum on 1 and 3.
     */
    private Groove timeGroove() {
        return withLayer(recipe("K---L---K-K-L---"), Limb.RIGHT_HAND, "hi-hat.closed", 2, "x x");
    }

    /** Common practice, no source: sixteenths from the snare down the toms, louder and louder. */
    private Groove fillGroove() {
        List<SoundName> down = new ArrayList<>();
        for (String drum : List.of("snare", "high-tom", "mid-tom", "floor-tom")) {
            down.add(kit.find(drum));
            down.add(kit.find(drum));
        }
        Recipe recipe = recipe("(R)(L)RL RLRL R>LR>L >R>L>R>L");
        return recipe.with(
                        recipe.voicing()
                                .with(Letter.R, LetterVoicing.on(Limb.RIGHT_HAND, down))
                                .with(Letter.L, LetterVoicing.on(Limb.LEFT_HAND, down)))
                .weave();
    }

    /** Common practice, no source: crash and bass drum with the band, off the beat, and silence. */
    private Groove punchGroove() {
        Recipe recipe = recipe("--->R --->R ---- --R-");
        Voicing voicing = recipe.voicing();
        LetterVoicing crash =
                new LetterVoicing(
                        Limb.RIGHT_HAND,
                        List.of(kit.find("crash")),
                        List.of(),
                        List.of(),
                        List.of(new Doubling(Limb.RIGHT_FOOT, kit.find("bass-drum"), false)),
                        false);
        return recipe.with(voicing.with(Letter.R, crash)).weave();
    }

    @Test
    void tellsTimeFillAndPunchApart() {
        assertThat(RoleFit.of(timeGroove()).best()).isEqualTo(Role.TIME);
        assertThat(RoleFit.of(fillGroove()).best()).isEqualTo(Role.FILL);
        assertThat(RoleFit.of(punchGroove()).best()).isEqualTo(Role.PUNCH);
    }

    @Test
    void eachRoleIsServedBestByItsOwnGroove() {
        for (Role role : Role.values()) {
            Map<Role, Groove> own =
                    Map.of(
                            Role.TIME, timeGroove(),
                            Role.FILL, fillGroove(),
                            Role.PUNCH, punchGroove());
            Role best =
                    own.keySet().stream()
                            .max(
                                    Comparator.comparingDouble(
                                            r ->
                                                    RoleFit.of(own.getOrDefault(r, timeGroove()))
                                                            .of(role)
                                                            .value()))
                            .orElseThrow();
            assertThat(best).isEqualTo(role);
        }
    }

    @Test
    void saysWhyInPlainWords() {
        assertThat(texts(timeGroove(), Role.TIME))
                .contains("keeps eighths on one cymbal (hi-hat)", "back beat (2 and 4)");
        assertThat(texts(fillGroove(), Role.FILL))
                .contains("travels down the toms", "goes round the kit (4 surfaces)");
        assertThat(texts(punchGroove(), Role.PUNCH))
                .contains(
                        "accents off the beat",
                        "marks with cymbal and bass drum together",
                        "keeps no eighths on one cymbal");
    }

    @Test
    void speaksOfNoCymbalWhereTheKitHasNone() {
        for (String name : List.of("timpani", "hand-drums", "marimba", "vibraphone")) {
            Groove groove =
                    Recipe.plain(Sticking.parse(">R L R L R L R >L"), BuiltInKits.load(name))
                            .weave();
            for (Role role : Role.values()) {
                assertThat(texts(groove, role)).noneMatch(text -> text.contains("cymbal"));
            }
            assertThat(texts(groove, Role.TIME))
                    .anyMatch(text -> text.startsWith("keeps eighths on one surface ("));
        }
    }

    @Test
    void aFillThatEndsOnCymbalAndBassDrumSaysSo() {
        Recipe recipe = recipe("RLRL RLRL RLRL RLRB");
        Groove groove =
                recipe.with(
                                recipe.voicing()
                                        .with(
                                                Letter.B,
                                                LetterVoicing.on(
                                                                Limb.RIGHT_HAND,
                                                                List.of(kit.find("crash")))
                                                        .withDoublings(
                                                                List.of(
                                                                        new Doubling(
                                                                                Limb.RIGHT_FOOT,
                                                                                kit.find(
                                                                                        "bass-drum"),
                                                                                false)))))
                        .weave();
        assertThat(texts(groove, Role.FILL)).contains("ends on a cymbal with bass drum");
    }

    @Test
    void reasonsComeLargestFirstAndSumToTheScore() {
        for (Groove groove : List.of(timeGroove(), fillGroove(), punchGroove())) {
            for (Role role : Role.values()) {
                RoleScore score = RoleFit.of(groove).of(role);
                assertThat(score.reasons())
                        .isSortedAccordingTo(Comparator.comparingDouble(Reason::share).reversed());
                assertThat(score.reasons().stream().mapToDouble(Reason::share).sum())
                        .isCloseTo(score.value(), within(1e-12));
            }
        }
    }

    @Test
    void weightsOfOnesOwnChangeTheScore() {
        RoleWeights only = RoleWeights.DEFAULT;
        for (Feature feature : Feature.values()) {
            only = only.with(Role.TIME, feature, feature == Feature.BACK_BEAT ? 1 : 0);
        }
        RoleScore score = RoleFit.of(timeGroove(), only).of(Role.TIME);
        assertThat(score.value()).isEqualTo(1);
        assertThat(score.reasons()).extracting(Reason::feature).containsExactly(Feature.BACK_BEAT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani"})
    void everyGrooveOnEveryKitHasScoresFromNothingToOne(String name) {
        Kit other = BuiltInKits.load(name);
        SplittableRandom random = new SplittableRandom(7);
        List<SoundName> sounds = other.soundsFor(Limb.RIGHT_HAND);
        for (Sticking sticking : new Catalogue(8).stream().toList()) {
            List<SoundName> path = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                path.add(sounds.get(random.nextInt(sounds.size())));
            }
            Recipe recipe = Recipe.plain(sticking, other);
            Groove groove =
                    recipe.with(
                                    recipe.voicing()
                                            .with(
                                                    Letter.R,
                                                    LetterVoicing.on(Limb.RIGHT_HAND, path)))
                            .weave();
            RoleFit.of(groove)
                    .scores()
                    .values()
                    .forEach(score -> assertThat(score.value()).isBetween(0.0, 1.0));
        }
    }

    /** Hand drums and bars have no cymbal: going down and standing still still differ. */
    @ParameterizedTest
    @ValueSource(strings = {"hand-drums", "marimba", "timpani"})
    void withoutCymbalsAFillStillGoesDownAndTimeStillStays(String name) {
        Kit other = BuiltInKits.load(name);
        KitTraits traits = new KitTraits(other);
        List<SoundName> down =
                other.soundsFor(Limb.RIGHT_HAND).stream()
                        .sorted(Comparator.comparing(traits::depth))
                        .toList();
        Recipe still = Recipe.plain(Sticking.parse("R-R-R-R-R-R-R-R-"), other);
        Recipe fill =
                still.with(still.voicing().with(Letter.R, LetterVoicing.on(Limb.RIGHT_HAND, down)));
        assertThat(value(fill, Role.FILL)).isGreaterThan(value(still, Role.FILL));
        assertThat(value(still, Role.TIME)).isGreaterThan(value(fill, Role.TIME));
    }

    /** A lesson may be opened on a kit that lacks its sounds: a conflict, not a failure. */
    @Test
    void soundsThatTheKitDoesNotHaveAreNoObstacle() {
        Recipe recipe = recipe("RLRL").with(BuiltInKits.load("hand-drums"));
        assertThat(RoleFit.of(recipe.weave()).of(Role.TIME).value()).isBetween(0.0, 1.0);
    }

    @Test
    void silenceServesNothing() {
        RoleFit fit = RoleFit.of(recipe("----").weave());
        for (Role role : Role.values()) {
            assertThat(fit.of(role)).isEqualTo(new RoleScore(0, List.of()));
        }
    }

    @Test
    void familiesFollowTheGeneralMidiTables() {
        Map<String, SoundFamily> families = new TreeMap<>();
        Kit extended = BuiltInKits.load("extended");
        extended.surfaces().forEach(s -> families.put(s.id(), SoundFamily.of(s.sounds().get(0))));
        assertThat(families)
                .containsEntry("snare", SoundFamily.SNARE)
                .containsEntry("floor-tom", SoundFamily.DRUM)
                .containsEntry("bass-drum", SoundFamily.BASS_DRUM)
                .containsEntry("second-ride", SoundFamily.RIDE)
                .containsEntry("third-crash", SoundFamily.CRASH)
                .containsEntry("splash", SoundFamily.CRASH)
                .containsEntry("hi-hat", SoundFamily.HI_HAT)
                .containsEntry("low-cowbell", SoundFamily.BELL)
                .containsEntry("wood-block", SoundFamily.BELL);
        assertThat(BuiltInKits.load("hand-drums").surfaces())
                .allMatch(s -> SoundFamily.of(s.sounds().get(0)) == SoundFamily.DRUM);
        assertThat(BuiltInKits.load("marimba").surfaces())
                .allMatch(s -> SoundFamily.of(s.sounds().get(0)) == SoundFamily.BAR);
    }

    @Test
    void refusesWeightsAndFeaturesThatAreNone() {
        assertThatThrownBy(() -> RoleWeights.DEFAULT.with(Role.FILL, Feature.DENSE, 1.5))
                .hasMessage("weight of dense for fill: expected -1 to 1, not 1.5");
        assertThatThrownBy(() -> Feature.of("backbeat"))
                .isInstanceOf(UnknownNameException.class)
                .hasMessageContaining("did you mean \"back-beat\"?");
    }

    private static double value(Recipe recipe, Role role) {
        return RoleFit.of(recipe.weave()).of(role).value();
    }

    private static List<String> texts(Groove groove, Role role) {
        return RoleFit.of(groove).of(role).reasons().stream().map(Reason::text).toList();
    }

    private Recipe recipe(String sticking) {
        return Recipe.plain(Sticking.parse(sticking), kit);
    }

    private Groove withLayer(Recipe recipe, Limb limb, String sound, int steps, String figure) {
        Layer layer = new Layer(limb, kit.find(sound), steps, Figure.parse(figure));
        return recipe.with(recipe.voicing().withLayers(List.of(layer))).weave();
    }
}
