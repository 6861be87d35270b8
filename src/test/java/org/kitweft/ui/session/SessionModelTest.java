package org.kitweft.ui.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class SessionModelTest {
    private final SessionModel model = new SessionModel(Session.opening());

    private void type(String text) {
        model.keepEditing("Typing", model.session().typed(text));
    }

    @Test
    void theOpeningGrooveHasHitsAndNoConflicts() {
        assertThat(model.groove().hits()).isNotEmpty();
        assertThat(model.groove().conflicts()).isEmpty();
    }

    @Test
    void typedTextIsWovenAtOnce() {
        type("RLRL");
        assertThat(model.groove().sticking()).isEqualTo(Sticking.parse("RLRL"));
    }

    @Test
    void aWrongTextIsKeptAndTheGrooveStays() {
        type("RLRL");
        type("RLRLX");
        assertThat(model.session().text()).isEqualTo("RLRLX");
        assertThat(model.session().fault())
                .hasValueSatisfying(f -> assertThat(f.index()).isEqualTo(4));
        assertThat(model.groove().sticking()).isEqualTo(Sticking.parse("RLRL"));
    }

    @Test
    void oneUndoTakesBackAWholeWordAndRedoBringsItBack() {
        String before = model.session().text();
        type("R");
        type("RL");
        type("RLR");
        model.undo();
        assertThat(model.session().text()).isEqualTo(before);
        model.redo();
        assertThat(model.session().text()).isEqualTo("RLR");
    }

    @Test
    void aSealedWordAndTheNextAreUndoneOneByOne() {
        type("RL");
        model.seal();
        type("RLL");
        model.undo();
        assertThat(model.session().text()).isEqualTo("RL");
    }

    @Test
    void anEditThatChangesNothingLeavesNoTraceInHistory() {
        model.edit("Nothing", model.session());
        assertThat(model.undoName()).isEmpty();
    }

    @Test
    void everyKindOfEditIsUndone() {
        Session before = model.session();
        model.edit("Tempo", before.with(new Tempo(140)));
        model.edit("Kit", model.session().on(BuiltInKits.load("hand-drums")));
        model.edit("Sticking", model.session().fresh(Sticking.parse("RRLL")));
        model.undo();
        model.undo();
        model.undo();
        assertThat(model.session()).isEqualTo(before);
        assertThat(model.groove()).isEqualTo(before.recipe().weave());
    }

    @Test
    void aNewEditForgetsWhatWasUndone() {
        type("RL");
        model.undo();
        type("LR");
        assertThat(model.redoName()).isEmpty();
    }

    @Test
    void listenersHearOfEachChangeOnce() {
        List<String> heard = new ArrayList<>();
        model.addListener(() -> heard.add(model.session().text()));
        type("RL");
        model.undo();
        assertThat(heard).containsExactly("RL", Session.opening().text());
    }

    @Test
    void anotherKitKeepsWhatItHasAndMakesTheRestPlain() {
        SoundName snare = new SoundName("snare", "head");
        Session onTimpani = model.session().on(BuiltInKits.load("timpani"));
        assertThat(onTimpani.recipe().weave().conflicts()).isEmpty();
        Session extended = model.session().on(BuiltInKits.load("extended"));
        assertThat(extended.recipe().voicing().letter(Letter.L).orElseThrow().path())
                .containsExactly(snare);
        assertThat(extended.recipe().weave().hits().size()).isEqualTo(model.groove().hits().size());
    }

    @Test
    void aMirroredKitPlaysTheSameWithThePedalsOnOtherFeet() {
        Session left = model.session().on(model.recipe().kit().forOtherHand());
        assertThat(left.recipe().weave().conflicts()).isEmpty();
        assertThat(left.recipe().weave().hits()).hasSameSizeAs(model.groove().hits());
    }

    /** A left-handed player does with each limb what a right-handed one does with its opposite. */
    @ParameterizedTest
    @ValueSource(strings = {">R (L) R R >L R (L) (L)", "RLRR LRLL K lR H", "RBLB"})
    void leftHandedEveryLimbPlaysWhatItsOppositePlayed(String sticking) {
        Session session = Session.opening();
        Recipe recipe = session.recipe().with(Sticking.parse(sticking));
        recipe =
                StrokeEdits.addLayer(
                        StrokeEdits.moveStroke(recipe, 0, new SoundName("ride", "bell")),
                        new Layer(
                                Limb.LEFT_FOOT,
                                new SoundName("hi-hat", "foot"),
                                2,
                                Figure.parse("- x")));
        Session right =
                session.with(recipe)
                        .with(Choices.NONE.with("R=ride,hi-hat", recipe.kit()))
                        .with(List.of(new Rule.Pin(0, new SoundName("ride", "bell"))));
        Session left = right.mirrored();
        assertThat(left.recipe().kit()).isEqualTo(recipe.kit().forOtherHand());
        assertThat(left.choices().letters()).containsExactly(Letter.L);
        assertThat(left.rules()).isEqualTo(right.rules());
        assertThat(strokes(left, UnaryOperator.identity()))
                .isEqualTo(strokes(right, Limb::opposite));
        assertThat(left.recipe().weave().conflicts())
                .hasSameSizeAs(right.recipe().weave().conflicts());
        assertThat(left.mirrored()).isEqualTo(right);
    }

    /** What is on the bars is struck by the other hand; the bars stay where they are. */
    @Test
    void leftHandedTheHandsChangeOnBarsAndTheBarsStay() {
        Session right = Session.opening().on(BuiltInKits.load("marimba"));
        Session left = right.mirrored();
        assertThat(left.recipe().kit().surfaces()).isEqualTo(right.recipe().kit().surfaces());
        assertThat(left.recipe().kit().leftHanded()).isTrue();
        assertThat(strokes(left, UnaryOperator.identity()))
                .isEqualTo(strokes(right, Limb::opposite));
        assertThat(left.mirrored()).isEqualTo(right);
    }

    private static Set<String> strokes(Session session, UnaryOperator<Limb> limb) {
        return session.recipe().weave().hits().stream()
                .map(hit -> hit.start() + " " + limb.apply(hit.limb()) + " " + hit.sound())
                .collect(Collectors.toSet());
    }

    @Test
    void whatIsHeardIsHeardAlsoWhileAPhrasePlays() {
        SessionModel model = new SessionModel(Session.opening());
        Recipe recipe = model.recipe();
        PhrasePlan plan = PhrasePlan.of(recipe, recipe, recipe, 4);
        Session playing = model.session().with(model.session().draft().with(plan).withPlays(true));
        model.edit("Phrase", playing);
        model.hear("Hear", model.session().with(recipe.with(Sticking.parse("RRLL"))));
        assertThat(model.session().draft().plays()).isFalse();

        model.edit("Open", playing.with(playing.draft().withOpen(OptionalInt.of(0))));
        model.hear("Hear", model.session().with(recipe.with(Sticking.parse("RRLL"))));
        assertThat(model.session().draft().plays()).as("the open section follows").isTrue();
    }
}
