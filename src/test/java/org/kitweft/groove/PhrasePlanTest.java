package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.TextFormatException;

class PhrasePlanTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");
    private static final Recipe PARADIDDLE = Recipe.plain(Sticking.parse(">RLRR >LRLL"), KIT);

    private static PhrasePlan one(Recipe recipe, int bars) {
        return PhrasePlan.ofOne(
                recipe,
                RoleVoicings.fill(recipe.voicing(), recipe.kit()),
                RoleVoicings.punch(recipe.voicing(), recipe.kit()),
                bars);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 8, 12, 31})
    void oneStickingGivesTimeFillAndPunch(int bars) {
        Phrase phrase = one(PARADIDDLE, bars).weave();
        assertThat(phrase.bars()).isEqualTo(bars);
        assertThat(phrase.ticks()).isEqualTo(bars * Meter.COMMON.barTicks());
        assertThat(phrase.sections().stream().map(Section::role))
                .containsExactly(Role.TIME, Role.FILL, Role.PUNCH);
        assertThat(phrase.sections().stream().map(s -> s.groove().bars()))
                .containsExactly(bars - 2, 1, 1);
        assertThat(phrase.sections()).allMatch(s -> s.groove().conflicts().isEmpty());
    }

    @Test
    void theFillTravelsAndThePunchLeavesOneHandWithTheBassDrum() {
        List<Section> sections = one(PARADIDDLE, 4).weave().sections();
        assertThat(surfaces(sections.get(1)))
                .containsExactlyInAnyOrder("snare", "high-tom", "mid-tom", "floor-tom");
        Groove punch = sections.get(2).groove();
        assertThat(surfaces(sections.get(2))).containsExactlyInAnyOrder("crash", "bass-drum");
        assertThat(punch.hits().stream().map(Hit::limb).distinct())
                .containsExactlyInAnyOrder(Limb.RIGHT_HAND, Limb.RIGHT_FOOT);
        assertThat(punch.hits().stream().map(h -> h.place().step()).distinct())
                .as("the right hand's strokes of RLRR LRLL twice")
                .containsExactly(1, 3, 4, 6, 9, 11, 12, 14);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hand-drums", "marimba", "vibraphone", "timpani", "extended"})
    void givesAllThreeOnAnyKitWithoutAConflict(String kit) {
        Recipe recipe = Recipe.plain(Sticking.parse("RLRR LRLL"), BuiltInKits.load(kit));
        assertThat(one(recipe, 4).weave().sections())
                .allMatch(s -> s.groove().conflicts().isEmpty() && !s.groove().hits().isEmpty());
    }

    @Test
    void givesAllThreeToALeftHandedPlayer() {
        Recipe recipe = Recipe.plain(Sticking.parse("RLRR LRLL"), KIT.forOtherHand());
        List<Section> sections = one(recipe, 4).weave().sections();
        assertThat(sections).allMatch(s -> s.groove().conflicts().isEmpty());
        assertThat(sections.get(2).groove().hits().stream().map(Hit::limb))
                .contains(Limb.LEFT_FOOT);
    }

    @Test
    void aShortSectionCutsItsGrooveAndALongOneRepeatsIt() {
        Recipe overTheBar =
                Recipe.plain(Sticking.parse("R--"), KIT).with(Grid.SIXTEENTHS.withOverTheBar(true));
        Groove whole = overTheBar.weave();
        assertThat(whole.bars()).isEqualTo(3);
        Groove cut = new PlannedSection(Role.FILL, overTheBar, 2).weave().groove();
        assertThat(cut.hits())
                .containsExactlyElementsOf(
                        whole.hits().stream().filter(h -> h.place().bar() <= 2).toList());
        Groove twice = new PlannedSection(Role.TIME, overTheBar, 6).weave().groove();
        assertThat(twice.bars(4, 6).hits()).isEqualTo(whole.hits());
    }

    @Test
    void sectionsAreExchangedAddedMovedAndTakenOut() {
        PhrasePlan plan = one(PARADIDDLE, 8);
        PlannedSection fill = plan.sections().get(1);
        assertThat(plan.without(1).plus(1, fill)).isEqualTo(plan);
        assertThat(plan.moved(1, 0).sections().get(0)).isEqualTo(fill);
        assertThat(plan.with(0, fill).bars()).isEqualTo(3);
        assertThatThrownBy(() -> new PhrasePlan(List.of(fill)).without(0))
                .hasMessage("a phrase has at least one section");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 12, 512})
    void anotherLengthStretchesTheLongestSectionOfTime(int bars) {
        PhrasePlan stretched = one(PARADIDDLE, 8).withBars(bars);
        assertThat(stretched.sections().stream().map(PlannedSection::bars))
                .containsExactly(bars - 2, 1, 1);
    }

    @Test
    void aLengthThatTheOtherSectionsTakeAlreadyIsRefused() {
        assertThatThrownBy(() -> one(PARADIDDLE, 8).withBars(2))
                .hasMessage("2 bars: the other sections of the phrase take 2 already");
        PlannedSection punch = one(PARADIDDLE, 8).sections().get(2);
        PhrasePlan noTime = new PhrasePlan(List.of(punch, punch.withBars(3)));
        assertThat(noTime.withBars(6).sections().get(1).bars())
                .as("without time the longest section")
                .isEqualTo(5);
    }

    @Test
    void everyBarStandsInItsSection() {
        PhrasePlan plan = one(PARADIDDLE, 4);
        assertThat(IntStream.rangeClosed(1, 4).map(plan::sectionAt)).containsExactly(0, 0, 1, 2);
        assertThat(plan.firstBar(2)).isEqualTo(4);
        assertThat(plan.lastBar(0)).isEqualTo(2);
        assertThatThrownBy(() -> plan.sectionAt(5)).hasMessage("bar 5: the phrase has bars 1 to 4");
    }

    @Test
    void refusesTwoKitsTooManyBarsAndTooFew() {
        PlannedSection long1 = new PlannedSection(Role.TIME, PARADIDDLE, 400);
        assertThatThrownBy(() -> new PhrasePlan(List.of(long1, long1)))
                .hasMessage("a phrase of 800 bars: expected at most 512");
        PlannedSection other =
                new PlannedSection(
                        Role.FILL,
                        Recipe.plain(Sticking.parse("RL"), BuiltInKits.load("timpani")),
                        1);
        assertThatThrownBy(() -> new PhrasePlan(List.of(long1, other)))
                .hasMessage("the sections of a phrase are on one kit");
        assertThatThrownBy(() -> one(PARADIDDLE, 2)).hasMessageContaining("at least 3");
    }

    @Test
    void barsOfAPhraseAreCutAcrossSections() {
        Phrase phrase = one(PARADIDDLE, 8).weave();
        Phrase cut = phrase.bars(6, 7);
        assertThat(cut.sections().stream().map(Section::role))
                .containsExactly(Role.TIME, Role.FILL);
        assertThat(cut.sections().get(1)).isEqualTo(phrase.sections().get(1));
        assertThat(cut.sections().get(0).groove().hits())
                .isEqualTo(phrase.sections().get(0).groove().bars(1, 1).hits());
        assertThat(phrase.bars(1, 8)).isEqualTo(phrase);
        assertThatThrownBy(() -> phrase.bars(8, 9))
                .hasMessage("bars 8 to 9: the phrase has bars 1 to 8");
    }

    @Test
    void conflictsAreCutWithTheirBars() {
        Recipe timpani = Recipe.plain(Sticking.parse("RK"), BuiltInKits.load("timpani"));
        Groove groove = new PlannedSection(Role.TIME, timpani, 3).weave().groove();
        assertThat(groove.bars(2, 2)).isEqualTo(groove.bars(1, 1));
        assertThat(groove.bars(3, 3).conflicts().get(0).places()).hasSize(8);
    }

    @Test
    void practiceRisesEveryFewLoopsUpToItsCeilingAndDropsOutEveryOther() {
        Practice practice = new Practice(new Tempo(60), 6, 2, new Tempo(70), true);
        assertThat(
                        IntStream.range(0, 7)
                                .mapToObj(practice::loop)
                                .map(
                                        loop ->
                                                loop.tempo().beatsPerMinute()
                                                        + (loop.sounds() ? "" : " silent")))
                .containsExactly("60", "60 silent", "66", "66 silent", "70", "70 silent", "70");
        assertThat(practice.loop(Integer.MAX_VALUE).tempo()).isEqualTo(new Tempo(70));
        assertThat(Practice.steady(new Tempo(90)).loop(99))
                .isEqualTo(new Practice.Loop(new Tempo(90), true));
    }

    @ParameterizedTest
    @CsvSource({"-1, 1, 90", "51, 1, 90", "5, 0, 90", "5, 101, 90", "5, 1, 59"})
    void whatIsNoPracticeIsRefused(int rise, int loops, int ceiling) {
        assertThatThrownBy(
                        () -> new Practice(new Tempo(60), rise, loops, new Tempo(ceiling), false))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tempoStepsAreReadAndWritten() {
        TempoSteps steps = TempoSteps.parse("60, 66 72");
        assertThat(steps).isEqualTo(TempoSteps.between(new Tempo(60), new Tempo(72), 6));
        assertThat(TempoSteps.parse(steps.text())).isEqualTo(steps);
        assertThat(TempoSteps.between(new Tempo(80), new Tempo(70), 6).text())
                .isEqualTo("80, 74, 70");
    }

    @ParameterizedTest(name = "{0}: at {1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '"',
            textBlock =
                    """
                    "";          0
                    "60, 666";   4
                    "60, fast";  4
                    "60, 19";    4
                    "-60";       0
                    """)
    void aFaultInTempoStepsIsPointedAt(String text, int index) {
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> TempoSteps.parse(text));
        assertThat(fault.index()).isEqualTo(index);
        assertThat(fault.expected()).isEqualTo("a tempo from 20 to 400");
    }

    private static Set<String> surfaces(Section section) {
        return section.groove().hits().stream()
                .map(hit -> hit.sound().surface())
                .collect(Collectors.toSet());
    }
}
