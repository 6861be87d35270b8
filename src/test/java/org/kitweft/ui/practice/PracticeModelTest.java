package org.kitweft.ui.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.sound.Course;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Stretch;
import org.kitweft.ui.play.FakePlayer;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.FaultsFail;
import org.kitweft.ui.session.PracticeChoices;
import org.kitweft.ui.session.PracticeChoices.Way;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class PracticeModelTest {
    private final FakePlayer player = new FakePlayer();
    private final SessionModel session = new SessionModel(Session.opening());
    private final PlayModel play =
            new PlayModel(session, new Playhead(), Runnable::run, new FaultsFail());
    private final PracticeModel model = new PracticeModel(session, play);

    private Course course() {
        return play.settings().course();
    }

    private void tempo(int beatsPerMinute) {
        session.edit("Tempo", session.session().with(new Tempo(beatsPerMinute)));
    }

    @Test
    void practiceIsUndoneLikeOtherEdits() {
        model.change(c -> c.with(Way.RISE));
        model.turn("Rise", c -> c.withRise(4));
        model.turn("Rise", c -> c.withRise(3));
        model.stretch(s -> s.with(Feel.HALF_TIME));
        assertThat(play.settings().stretch().feel()).isEqualTo(Feel.HALF_TIME);
        session.undo();
        assertThat(play.settings().stretch()).isEqualTo(Stretch.WHOLE);
        assertThat(model.choices().rise()).isEqualTo(3);
        session.undo();
        assertThat(model.choices()).isEqualTo(PracticeChoices.FIRST.with(Way.RISE));
        session.undo();
        assertThat(model.choices()).isEqualTo(PracticeChoices.FIRST);
        assertThat(course()).isEqualTo(Course.STEADY);
    }

    @Test
    void theTrainerRisesFromTheTempoOfTheSessionAndLoops() {
        play.change(s -> s.withLoops(1));
        model.change(c -> c.with(Way.RISE).withRise(4).withCeiling(new Tempo(110)));
        assertThat(course())
                .isEqualTo(
                        new Course.Practised(
                                new Practice(new Tempo(90), 4, 4, new Tempo(110), false)));
        assertThat(play.settings().loops()).isEqualTo(PlaySettings.ENDLESS);
        tempo(100);
        assertThat(course().loop(0, 0, new Tempo(100)).tempo()).isEqualTo(new Tempo(100));
        tempo(200);
        assertThat(course().loop(99, 0, new Tempo(200)).tempo())
                .as("a ceiling below the tempo does not slow it down")
                .isEqualTo(new Tempo(200));
        model.change(c -> c.with(Way.STEADY));
        assertThat(course()).isEqualTo(Course.STEADY);
    }

    @Test
    void everyOtherLoopDropsOutAtASteadyTempoToo() {
        model.change(c -> c.withDropOut(true));
        tempo(77);
        assertThat(course().loop(1, 0, new Tempo(77)))
                .isEqualTo(new Practice.Loop(new Tempo(77), false));
    }

    @Test
    void typedStepsArePlayedAndWhatIsNoTempoIsTold() {
        model.change(c -> c.with(Way.STEPS).withLoopsEach(2));
        model.typeSteps("60 66,72");
        Course typed = new Course.Stepped(TempoSteps.parse("60 66 72"), 2, false);
        assertThat(course()).isEqualTo(typed);
        model.typeSteps("60 6666");
        assertThat(model.fault()).get().asString().contains("tempo from 20 to 400");
        assertThat(course()).isEqualTo(typed);
        model.typeSteps("50");
        assertThat(model.fault()).isEmpty();
    }

    @Test
    void stepsAreTakenFromTheOpenItemOfTheLesson() {
        assertThat(model.lessonSteps()).isEmpty();
        LessonItem item =
                new LessonItem(
                        "", Role.TIME, session.recipe(), new Tempo(80), List.of(80, 88, 96), "");
        session.edit(
                "Open",
                session.session().with(new Lesson("", "", List.of(item)), OptionalInt.of(0)));
        model.useLessonSteps();
        assertThat(model.choices().way()).isEqualTo(Way.STEPS);
        assertThat(model.choices().steps().text()).isEqualTo("80, 88, 96");
    }

    @Test
    void barsAreLoopedAndFollowWhereThePhraseBecomesShorter() {
        session.edit("Bars", session.recipe().withBars(OptionalInt.of(4)));
        model.cut(true);
        model.firstBar(3);
        assertThat(play.settings().stretch()).isEqualTo(new Stretch(3, 4, Feel.AS_WRITTEN));
        model.lastBar(2);
        assertThat(play.settings().stretch()).isEqualTo(new Stretch(2, 2, Feel.AS_WRITTEN));
        session.edit("Bars", session.recipe().withBars(OptionalInt.of(1)));
        assertThat(model.firstBar()).isEqualTo(1);
        model.cut(false);
        assertThat(play.settings().stretch()).isEqualTo(Stretch.WHOLE);
    }

    @Test
    void whatLiesAheadIsSaidInLoopsAndTime() {
        model.change(c -> c.with(Way.STEPS).withLoopsEach(3));
        model.typeSteps("60 120");
        // One bar of 4/4 at 60 lasts 4 s.
        assertThat(model.ahead()).isEqualTo("60 to 120 in 3 loops, 12 s");
        model.stretch(s -> s.with(Feel.HALF_TIME));
        assertThat(model.ahead()).isEqualTo("60 to 120 in 3 loops, 24 s");
        model.change(c -> c.with(Way.STEADY));
        assertThat(model.ahead()).isEmpty();
    }

    @Test
    void theLoopThatIsHeardIsShownWhileItPlays() {
        play.attach(player);
        play.play();
        player.listeners.get(0).loop(3, new Practice.Loop(new Tempo(66), false));
        assertThat(model.now()).isEqualTo("loop 3 at 66, silent");
        play.stop();
        assertThat(model.now()).isEmpty();
    }
}
