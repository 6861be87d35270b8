package org.kitweft.ui.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.ladder.Ladder;
import org.kitweft.explore.ladder.Rung;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.explore.Audition;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.search.Finding;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class ClimbTest {
    private final SessionModel session = new SessionModel(Session.opening());
    private final Climb climb = new Climb(session, Tasks.DIRECT);

    @BeforeEach
    void followTheGrid() {
        session.addListener(climb::follow);
        climb.follow();
    }

    private List<Recipe> recipes() {
        return climb.rungs().stream().map(Finding::recipe).toList();
    }

    @Test
    void theLadderLeadsToTheGrooveInTheGrid() {
        Ladder ladder = Ladder.to(OpeningGroove.recipe());
        assertThat(climb.ladder()).contains(ladder);
        assertThat(climb.rungs())
                .extracting(Finding::words)
                .containsExactlyElementsOf(ladder.rungs().stream().map(Rung::change).toList());
        assertThat(climb.rungs()).extracting(Finding::lead).startsWith("1", "2", "3");
        assertThat(recipes()).endsWith(OpeningGroove.recipe());
        assertThat(climb.line())
                .startsWith(ladder.rungs().size() + " rungs, each one new thing;")
                .endsWith("no order rises less.");
    }

    @Test
    void hearingARungIsNoOtherGroove() {
        Ladder before = climb.ladder().orElseThrow();
        for (Recipe rung : recipes()) {
            session.keepEditing("Choose rung", session.session().with(rung));
            assertThat(climb.ladder()).containsSame(before);
        }
        session.undo();
        assertThat(session.recipe()).isEqualTo(OpeningGroove.recipe());
        assertThat(climb.ladder()).containsSame(before);
    }

    @Test
    void anotherGrooveInTheGridHasALadderOfItsOwn() {
        session.edit("Type", session.session().typed("RRLL"));
        assertThat(recipes()).endsWith(session.recipe());
        assertThat(recipes().get(0).sticking().text()).isEqualTo("RRLL");
    }

    @Test
    void whilePlayingARungWaitsForTheBarLine() {
        Playhead playhead = new Playhead();
        Audition audition = new Audition(session, playhead);
        Recipe first = recipes().get(0);
        playhead.at(new Place(1, 5), List.of());
        audition.hear("Choose rung", now -> now.with(first));
        assertThat(session.recipe()).isEqualTo(OpeningGroove.recipe());
        playhead.at(new Place(1, 16), List.of());
        assertThat(session.recipe()).isEqualTo(first);
    }

    @Test
    void whatIsTakenDoesNotWait() {
        Playhead playhead = new Playhead();
        Audition audition = new Audition(session, playhead);
        Recipe first = recipes().get(0);
        playhead.at(new Place(1, 5), List.of());
        audition.hear("Choose rung", now -> now.with(first));
        audition.take();
        assertThat(session.recipe()).isEqualTo(first);
        session.undo();
        playhead.at(new Place(1, 16), List.of());
        assertThat(session.recipe()).isEqualTo(OpeningGroove.recipe());
    }

    @Test
    void allRungsGoIntoTheLessonAndComeOutWithOneUndo() {
        Lesson before = session.session().lesson();
        climb.keepAll();
        List<LessonItem> items = session.session().lesson().items();
        assertThat(items).extracting(LessonItem::recipe).isEqualTo(recipes());
        assertThat(items.get(0).title())
                .isEqualTo("Rung 1 of %d: the sticking on one surface".formatted(items.size()));
        assertThat(session.session().item()).isEqualTo(OptionalInt.empty());
        assertThat(session.undoName()).contains("Keep ladder");
        session.undo();
        assertThat(session.session().lesson()).isEqualTo(before);
    }

    @Test
    void aLessonWithoutRoomForAllTakesNone() {
        LessonItem item =
                new LessonItem(
                        "", Role.TIME, session.recipe(), session.session().tempo(), List.of(), "");
        Lesson nearlyFull = new Lesson("", "", Collections.nCopies(Lesson.MAX_ITEMS - 1, item));
        session.edit("Fill", session.session().with(nearlyFull));
        assertThatThrownBy(climb::keepAll).hasMessage("501 items: a lesson has at most 500");
        assertThat(session.session().lesson()).isEqualTo(nearlyFull);
    }

    @Test
    void aGrooveTooFarFromAnyLadderIsToldInOneLine() {
        Session long80 = session.session().typed("[RL]*40");
        Recipe recipe = long80.recipe();
        for (int stroke = 0; stroke < 80; stroke++) {
            String sound = stroke % 4 < 2 ? "ride" : "crash";
            recipe = recipe.with(recipe.voicing().withStroke(stroke, recipe.kit().find(sound)));
        }
        session.edit("Move", long80.with(recipe));
        assertThat(climb.ladder()).isEmpty();
        assertThat(climb.line()).startsWith("a ladder has at most 64 changes");
    }
}
