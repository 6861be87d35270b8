package org.kitweft.ui.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.explore.ladder.Ladder;
import org.kitweft.explore.ladder.Rung;
import org.kitweft.groove.Recipe;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.search.Finding;
import org.kitweft.ui.search.Outlook;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/**
 * The ladder to the groove in the grid, made anew off the event thread when another groove stands
 * there. A rung that is being heard is no other groove: the ladder stays. For one thread.
 */
public final class Climb {
    private final SessionModel session;
    private final Tasks tasks;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<Recipe> goal = Optional.empty();
    private Optional<Ladder> ladder = Optional.empty();
    private Optional<Outlook> outlook = Optional.empty();
    private Tasks.Running running = () -> {};
    private String fault = "";

    /** No ladder yet; see {@link #follow()}. */
    public Climb(SessionModel session, Tasks tasks) {
        this.session = session;
        this.tasks = tasks;
    }

    /** Is called when a ladder begins to be made and when it stands. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /**
     * Makes the ladder to the groove in the grid, unless that is the goal or a rung of this one.
     */
    public void follow() {
        Recipe now = session.recipe();
        boolean known =
                goal.equals(Optional.of(now))
                        || ladder.map(Ladder::rungs).orElse(List.of()).stream()
                                .anyMatch(rung -> rung.recipe().equals(now));
        if (known) {
            return;
        }
        running.stop();
        goal = Optional.of(now);
        ladder = Optional.empty();
        fault = "";
        Outlook watch = new Outlook();
        outlook = Optional.of(watch);
        tell();
        running =
                tasks.run(
                        "",
                        progress -> Ladder.to(now, watch.within(progress)),
                        made -> {
                            outlook = Optional.empty();
                            ladder = Optional.of(made);
                            tell();
                        },
                        failure -> {
                            outlook = Optional.empty();
                            fault =
                                    failure.getMessage() == null
                                            ? "no ladder leads there"
                                            : failure.getMessage();
                            tell();
                        });
    }

    /** Ends the search for the best order: the changes not yet in order come as they are listed. */
    public void stop() {
        outlook.ifPresent(Outlook::stop);
    }

    /** How far it is, from 0 to 1; empty while no ladder is being made. */
    public Optional<Double> part() {
        return outlook.map(Outlook::part);
    }

    /** The ladder, once it stands. */
    public Optional<Ladder> ladder() {
        return ladder;
    }

    /** Why there is no ladder, in one line; empty if there is one or it is being made. */
    public String fault() {
        return fault;
    }

    /** The rungs as rows, the plainest first. */
    public List<Finding> rungs() {
        List<Finding> rows = new ArrayList<>();
        for (Rung rung : ladder.map(Ladder::rungs).orElse(List.of())) {
            rows.add(
                    new Finding(
                            rung.recipe(),
                            rung.difficulty(),
                            String.valueOf(rows.size() + 1),
                            rung.change()));
        }
        return rows;
    }

    /** How the ladder stands, in one line. */
    public String line() {
        if (!fault.isEmpty()) {
            return fault;
        }
        if (ladder.isEmpty()) {
            return outlook.isPresent() ? "looking for the gentlest order…" : "";
        }
        int rungs = ladder.get().rungs().size();
        if (rungs == 1) {
            return "The groove in the grid is its own only rung: nothing is added.";
        }
        return String.format(
                Locale.ROOT,
                "%d rungs, each one new thing; the largest rise is %.0f points a bar%s",
                rungs,
                ladder.get().largestRise(),
                ladder.get().exact() ? ", no order rises less." : ", perhaps more than it must.");
    }

    /**
     * All rungs as items of the lesson, in order, none of which is edited then.
     *
     * @throws IllegalArgumentException if the lesson has no room for them
     */
    public void keepAll() {
        Session now = session.session();
        Lesson lesson = now.lesson();
        List<Rung> rungs = ladder.map(Ladder::rungs).orElse(List.of());
        for (int i = 0; i < rungs.size(); i++) {
            Rung rung = rungs.get(i);
            lesson =
                    lesson.withItem(
                            new LessonItem(
                                    "Rung %d of %d: %s"
                                            .formatted(i + 1, rungs.size(), rung.change()),
                                    now.role(),
                                    rung.recipe(),
                                    now.tempo(),
                                    List.of(),
                                    ""));
        }
        session.edit("Keep ladder", now.with(lesson, now.item()));
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
