package org.kitweft.ui.practice;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.UnaryOperator;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.pattern.TextFormatException;
import org.kitweft.sound.Course;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Stretch;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.Playing;
import org.kitweft.ui.session.PracticeChoices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

/**
 * Practice as it is chosen now: it becomes the course of how things are played, and follows the
 * session's tempo. Choices and stretch belong to the session, where they are undone; others choose
 * bars too. For one thread, the event thread.
 */
final class PracticeModel {
    private static final String EDIT = "Practice";

    private final SessionModel session;
    private final PlayModel play;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<String> fault = Optional.empty();

    PracticeModel(SessionModel session, PlayModel play) {
        this.session = session;
        this.play = play;
        session.addListener(this::follow);
        play.addListener(this::tell);
    }

    /** Is called after each change of what it shows. */
    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    PracticeChoices choices() {
        return session.session().playing().practice();
    }

    /** Changes what is chosen; heard from the next step on. */
    void change(UnaryOperator<PracticeChoices> change) {
        session.edit(EDIT, with(playing -> playing.with(change.apply(playing.practice()))));
    }

    /** The same while a figure is turned or typed: undone as one with those before it. */
    void turn(String what, UnaryOperator<PracticeChoices> change) {
        session.keepEditing(what, with(playing -> playing.with(change.apply(playing.practice()))));
    }

    private Session with(UnaryOperator<Playing> change) {
        Session now = session.session();
        return now.with(change.apply(now.playing()));
    }

    /** Goes through typed steps; what is no list of tempi is told and changes nothing else. */
    void typeSteps(String text) {
        try {
            TempoSteps steps = TempoSteps.parse(text);
            fault = Optional.empty();
            turn("Tempo steps", c -> c.with(steps));
        } catch (TextFormatException e) {
            fault = Optional.of(e.getMessage().lines().findFirst().orElse(""));
        }
        tell();
    }

    /** What is wrong with the steps that were typed last. */
    Optional<String> fault() {
        return fault;
    }

    /** The steps of the lesson's item that is open, if it has some. */
    Optional<TempoSteps> lessonSteps() {
        Session now = session.session();
        if (now.item().isEmpty()) {
            return Optional.empty();
        }
        List<Integer> steps = now.lesson().items().get(now.item().getAsInt()).tempoSteps();
        return steps.isEmpty()
                ? Optional.empty()
                : Optional.of(new TempoSteps(steps.stream().map(Tempo::new).toList()));
    }

    /** Goes through the lesson's steps. */
    void useLessonSteps() {
        lessonSteps()
                .ifPresent(
                        steps -> {
                            fault = Optional.empty();
                            change(c -> c.with(steps).with(PracticeChoices.Way.STEPS));
                        });
    }

    /** Which bars are looped, and at which feel. */
    Stretch stretch() {
        return session.session().playing().stretch();
    }

    /** Loops other bars, or at another feel; heard from the next step on. */
    void stretch(UnaryOperator<Stretch> change) {
        session.edit(EDIT, with(playing -> playing.with(change.apply(playing.stretch()))));
    }

    /** How many bars there are to choose from. */
    int bars() {
        return session.phrase().bars();
    }

    /** The bars that are played now, for the phrase may have become shorter. */
    int firstBar() {
        return stretch().firstOf(bars());
    }

    int lastBar() {
        return stretch().lastOf(bars());
    }

    /** Plays only these bars; the other end follows where they cross. */
    void firstBar(int bar) {
        bars(bar, Math.max(bar, lastBar()));
    }

    void lastBar(int bar) {
        bars(Math.min(bar, firstBar()), bar);
    }

    private void bars(int first, int last) {
        session.keepEditing(
                "Choose bars",
                with(playing -> playing.with(playing.stretch().withBars(first, last))));
    }

    /** Plays only some bars, at first all there are, or all again. */
    void cut(boolean cut) {
        stretch(s -> cut ? s.withBars(1, bars()) : s.ofAllBars());
    }

    /** What lies ahead, in one line: {@code 90 to 120 in 24 loops, 1 min 4 s}. */
    String ahead() {
        Course course = choices().course(tempo());
        int settled = course.settled();
        if (settled == 0) {
            return "";
        }
        double seconds = 0;
        for (int loop = 0; loop < settled; loop++) {
            seconds += loopSeconds(course.loop(loop, PlaySettings.ENDLESS, tempo()).tempo());
        }
        long whole = Math.round(seconds);
        return "%d to %d in %d loops, %s"
                .formatted(
                        course.loop(0, PlaySettings.ENDLESS, tempo()).tempo().beatsPerMinute(),
                        course.loop(settled, PlaySettings.ENDLESS, tempo())
                                .tempo()
                                .beatsPerMinute(),
                        settled,
                        whole < 60
                                ? whole + " s"
                                : "%d min %d s".formatted(whole / 60, whole % 60));
    }

    private double loopSeconds(Tempo at) {
        Phrase phrase = session.phrase().bars(firstBar(), lastBar());
        double seconds = 0;
        for (Section section : phrase.sections()) {
            seconds += at.seconds(section.groove().ticks(), section.groove().grid().meter());
        }
        return seconds * stretch().feel().rounds();
    }

    /** The loop and tempo that are heard now; empty while nothing plays. */
    String now() {
        return play.heardLoop().map(heard -> heard.text()).orElse("");
    }

    private Tempo tempo() {
        return session.session().tempo();
    }

    private void follow() {
        apply();
        tell();
    }

    private void apply() {
        Course course = choices().course(tempo());
        boolean begins = play.settings().course().equals(Course.STEADY);
        play.change(
                settings -> {
                    PlaySettings next = settings.withCourse(course);
                    // A trainer of one loop would train nothing.
                    return begins && !course.equals(Course.STEADY)
                            ? next.withLoops(PlaySettings.ENDLESS)
                            : next;
                });
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
