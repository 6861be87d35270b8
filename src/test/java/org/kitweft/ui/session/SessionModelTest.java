package org.kitweft.ui.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
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
        Session left = model.session().on(model.recipe().kit().mirrored());
        assertThat(left.recipe().weave().conflicts()).isEmpty();
        assertThat(left.recipe().weave().hits()).hasSameSizeAs(model.groove().hits());
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
