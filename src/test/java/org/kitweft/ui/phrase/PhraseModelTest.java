package org.kitweft.ui.phrase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Place;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Role;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.Stretch;
import org.kitweft.ui.lesson.LessonEdits;
import org.kitweft.ui.play.FakePlayer;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class PhraseModelTest {
    private final SessionModel session = new SessionModel(Session.opening());
    private final List<String> told = new ArrayList<>();
    private final Notices notices =
            new Notices() {
                @Override
                public void note(String line) {
                    told.add(line);
                }

                @Override
                public void fault(String line) {
                    told.add("fault: " + line);
                }
            };
    private final FakePlayer player = new FakePlayer();
    private final PlayModel play = new PlayModel(session, new Playhead(), Runnable::run, notices);
    private final PhraseModel model = new PhraseModel(session, play, notices);

    @BeforeEach
    void attach() {
        play.attach(player);
    }

    private List<Role> roles() {
        return plan().sections().stream().map(PlannedSection::role).toList();
    }

    private PhrasePlan plan() {
        return model.plan().orElseThrow();
    }

    @Test
    void oneStickingGivesAllThreeAndPlays() {
        model.length(12);
        model.makeOfOne();
        assertThat(roles()).containsExactly(Role.TIME, Role.FILL, Role.PUNCH);
        assertThat(plan().bars()).isEqualTo(12);
        assertThat(model.plays()).isTrue();
        assertThat(player.shown.get(player.shown.size() - 1).phrase().bars()).isEqualTo(12);
        session.undo();
        assertThat(model.plan()).isEmpty();
        assertThat(player.shown.get(player.shown.size() - 1).phrase().bars()).isEqualTo(1);
    }

    @Test
    void sectionsAreAddedFromTheGridAndFromTheLesson() {
        model.addGroove();
        session.edit("Add", LessonEdits.addGroove(session.session().with(Role.FILL)));
        model.addItem(0);
        assertThat(roles()).containsExactly(Role.TIME, Role.FILL);
        assertThat(model.selected()).isEqualTo(OptionalInt.of(1));
        assertThat(plan().bars()).isEqualTo(3);
    }

    @Test
    void sectionsAreMovedLengthenedAndRemovedAndAllOfItCanBeUndone() {
        model.makeOfOne();
        PhrasePlan made = plan();
        model.select(1);
        model.move(-1);
        assertThat(roles()).containsExactly(Role.FILL, Role.TIME, Role.PUNCH);
        assertThat(model.selected()).isEqualTo(OptionalInt.of(0));
        model.lengthen(1);
        model.lengthen(1);
        assertThat(plan().sections().get(0).bars()).isEqualTo(3);
        model.remove();
        assertThat(roles()).containsExactly(Role.TIME, Role.PUNCH);
        session.undo();
        session.undo();
        assertThat(plan().sections().get(0).bars()).as("lengthening is one edit").isEqualTo(1);
        session.undo();
        assertThat(plan()).isEqualTo(made);
    }

    @Test
    void aSectionIsNeverShorterThanABarAndMovesNoFurtherThanTheEnds() {
        model.makeOfOne();
        model.select(2);
        model.lengthen(-5);
        assertThat(plan().sections().get(2).bars()).isEqualTo(1);
        model.move(5);
        assertThat(roles()).containsExactly(Role.TIME, Role.FILL, Role.PUNCH);
        model.select(-3);
        assertThat(model.selected()).isEqualTo(OptionalInt.of(0));
    }

    @Test
    void withoutItsLastSectionThereIsNoPhraseAndTheGroovePlays() {
        model.addGroove();
        model.remove();
        assertThat(model.plan()).isEmpty();
        assertThat(model.plays()).isFalse();
        model.plays(true);
        assertThat(told).last().asString().contains("no phrase yet");
    }

    @Test
    void anOpenSectionFollowsTheGridUntilItIsClosed() {
        model.makeOfOne();
        model.select(1);
        model.toggleOpen();
        assertThat(session.recipe()).isEqualTo(plan().sections().get(1).recipe());
        assertThat(session.session().role()).isEqualTo(Role.FILL);
        session.edit("Typing", session.session().typed("RRLL RRLL"));
        Sticking typed = Sticking.parse("RRLL RRLL");
        assertThat(plan().sections().get(1).recipe().sticking()).isEqualTo(typed);
        assertThat(player.shown.get(player.shown.size() - 1).phrase())
                .as("heard at once")
                .isEqualTo(plan().weave());
        model.move(1);
        assertThat(model.open()).as("it stays open where it goes").isEqualTo(OptionalInt.of(2));
        model.toggleOpen();
        session.edit("Typing", session.session().typed("RLRL"));
        assertThat(plan().sections().get(2).recipe().sticking()).isEqualTo(typed);
    }

    @Test
    void whileASectionIsOpenAnInvalidTextLeavesItAsItWas() {
        model.makeOfOne();
        model.toggleOpen();
        PhrasePlan before = plan();
        session.edit("Typing", session.session().typed("RLRX"));
        assertThat(plan()).isEqualTo(before);
        assertThat(session.session().text()).isEqualTo("RLRX");
    }

    @Test
    void theWholePhraseGoesToAnotherKitAndSwingsAsOne() {
        model.makeOfOne();
        session.edit("Kit", session.session().on(BuiltInKits.load("extended")));
        assertThat(plan().sections()).allMatch(s -> s.recipe().kit().name().equals("extended"));
        session.edit("Swing", session.session().withSwing(62));
        assertThat(plan().sections()).allMatch(s -> s.recipe().grid().swing() == 62);
    }

    @Test
    void aGrooveOnAnotherKitIsRefusedInALine() {
        model.makeOfOne();
        PhrasePlan before = plan();
        session.edit("Add", LessonEdits.addGroove(session.session()));
        var other = session.session().on(BuiltInKits.load("timpani")).recipe();
        session.edit(
                "Other",
                session.session()
                        .with(
                                session.session()
                                        .lesson()
                                        .withItem(
                                                0,
                                                session.session()
                                                        .lesson()
                                                        .items()
                                                        .get(0)
                                                        .withRecipe(other)),
                                OptionalInt.empty()));
        model.addItem(0);
        assertThat(plan()).isEqualTo(before);
        assertThat(told)
                .last()
                .asString()
                .isEqualTo(
                        "fault: The phrase is on the kit five-piece, the groove on timpani: a"
                                + " phrase is on one kit");
    }

    @Test
    void aLengthThatDoesNotFitIsRefusedInALine() {
        model.makeOfOne();
        model.length(2);
        assertThat(plan().bars()).isEqualTo(8);
        assertThat(told).last().asString().startsWith("fault: 2 bars: the other sections");
    }

    @Test
    void playsFromASectionAndOnlyASection() {
        model.makeOfOne();
        model.select(1);
        model.playFrom();
        assertThat(player.settings().stretch()).isEqualTo(Stretch.WHOLE.withBars(7, 8));
        assertThat(List.of(0, 1, 2)).filteredOn(model::isHeard).containsExactly(1, 2);
        assertThat(player.isPlaying()).isTrue();
        model.loop(true);
        assertThat(model.isLooped()).isTrue();
        assertThat(player.settings().stretch()).isEqualTo(Stretch.WHOLE.withBars(7, 7));
        model.loop(false);
        assertThat(player.settings().stretch()).isEqualTo(Stretch.WHOLE);
        model.loop(true);
        model.plays(false);
        assertThat(player.settings().stretch()).as("the groove is whole").isEqualTo(Stretch.WHOLE);
    }

    @Test
    void aNoteOnTheStaffLeadsToItsStrokeOrSaysWhoseItIs() {
        List<Place> shown = new ArrayList<>();
        model.clicked(new Place(1, 3), shown::add);
        model.makeOfOne();
        model.clicked(new Place(7, 3), shown::add);
        assertThat(shown).containsExactly(new Place(1, 3));
        assertThat(model.selected()).isEqualTo(OptionalInt.of(1));
        assertThat(told).last().asString().contains("section 2, fill");
        model.toggleOpen();
        model.clicked(new Place(7, 5), shown::add);
        assertThat(shown).containsExactly(new Place(1, 3), new Place(1, 5));
        model.select(0);
        model.toggleOpen();
        model.clicked(new Place(4, 2), shown::add);
        assertThat(shown)
                .last()
                .as("the groove comes round in the grid")
                .isEqualTo(new Place(1, 2));
    }

    @Test
    void whatCannotBePlayedIsNamedAtItsSection() {
        model.makeOfOne();
        assertThat(model.conflict(0)).isEqualTo(Optional.empty());
        model.toggleOpen();
        session.edit(
                "Move",
                session.recipe()
                        .with(
                                session.recipe()
                                        .voicing()
                                        .withStroke(
                                                0, session.recipe().kit().find("hi-hat.foot"))));
        assertThat(model.conflict(0)).isPresent();
        assertThat(model.conflict(1)).isEmpty();
    }
}
