package org.kitweft.ui.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.Session;

class KeepingTest {
    private final Session opening = Session.opening();
    private final Kit kit = opening.recipe().kit();

    @Test
    void whatIsTakenStandsInTheGridWithItsRole() {
        Recipe fill = Recipe.plain(Sticking.parse("RLKR LKRL"), kit);
        Session taken = Keeping.taken(opening, fill, Role.FILL);
        assertThat(taken.recipe()).isEqualTo(fill);
        assertThat(taken.role()).isEqualTo(Role.FILL);
        assertThat(taken.text()).isEqualTo("RLKR LKRL");
        assertThat(taken.fault()).isEmpty();
    }

    @Test
    void pinsStayOnlyWhereTheLettersDo() {
        Session pinned = opening.pinned(2, kit.find("snare"));
        Recipe plain = Recipe.plain(Sticking.parse("RLRR LRLL"), kit);
        assertThat(Keeping.taken(pinned, plain, Role.TIME).rules()).isEqualTo(pinned.rules());
        Recipe other = Recipe.plain(Sticking.parse("RLRR LRLR"), kit);
        assertThat(Keeping.taken(pinned, other, Role.TIME).rules()).isEmpty();
    }

    @Test
    void whatIsKeptIsAnItemThatIsNotBeingEdited() {
        Recipe fill = Recipe.plain(Sticking.parse("RLKR"), kit);
        Session kept = Keeping.kept(opening, "Fill RLKR", fill, Role.FILL, "goes round the kit");
        LessonItem item = kept.lesson().items().get(0);
        assertThat(item.title()).isEqualTo("Fill RLKR");
        assertThat(item.recipe()).isEqualTo(fill);
        assertThat(item.role()).isEqualTo(Role.FILL);
        assertThat(item.tempo()).isEqualTo(opening.tempo());
        assertThat(item.remarks()).isEqualTo("goes round the kit");
        assertThat(kept.item()).isEmpty();
        assertThat(kept.recipe()).isEqualTo(opening.recipe());
    }

    @Test
    void aFullLessonTakesNoMore() {
        Session one = Keeping.kept(opening, "", opening.recipe(), Role.TIME, "");
        LessonItem item = one.lesson().items().get(0);
        Session full =
                opening.with(
                        new Lesson("", "", java.util.Collections.nCopies(Lesson.MAX_ITEMS, item)));
        assertThatThrownBy(() -> Keeping.kept(full, "", opening.recipe(), Role.TIME, ""))
                .hasMessage("501 items: a lesson has at most 500");
    }

    @Test
    void aVoicingInWordsNamesEverythingThatIsNotPlain() {
        Recipe plain = Recipe.plain(Sticking.parse("R L H K"), kit);
        LetterVoicing right =
                new LetterVoicing(
                        Limb.RIGHT_HAND,
                        List.of(kit.find("ride"), kit.find("ride.bell")),
                        List.of(kit.find("crash")),
                        List.of(kit.find("snare")),
                        List.of(
                                new Doubling(Limb.RIGHT_FOOT, kit.find("bass-drum"), true),
                                new Doubling(Limb.LEFT_HAND, kit.find("snare"), false)),
                        false);
        LetterVoicing foot = LetterVoicing.on(Limb.RIGHT_FOOT, List.of(kit.find("bass-drum")));
        Recipe recipe =
                plain.with(
                        plain.voicing()
                                .with(Letter.R, right)
                                .with(Letter.L, foot)
                                .with(
                                        Letter.H,
                                        plain.voicing()
                                                .letter(Letter.H)
                                                .orElseThrow()
                                                .withTacet(true))
                                .withStroke(3, kit.find("crash"))
                                .withLayers(
                                        List.of(
                                                new Layer(
                                                        Limb.LEFT_FOOT,
                                                        kit.find("hi-hat.foot"),
                                                        2,
                                                        Figure.parse("- x")))));
        assertThat(RecipeWords.voicing(recipe))
                .isEqualTo(
                        "R: ride ride.bell, accents crash, ghosts snare, accents with bass-drum"
                                + " with snare; L by the right foot: bass-drum; K: bass-drum;"
                                + " H: tacet; stroke 4: crash;"
                                + " layer of the left foot: hi-hat.foot@2: - x");
    }
}
