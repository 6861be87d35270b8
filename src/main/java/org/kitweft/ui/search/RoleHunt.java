package org.kitweft.ui.search;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.search.RoleSearch;
import org.kitweft.explore.search.RoleWish;
import org.kitweft.explore.search.Serving;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/**
 * A search for grooves that serve a role, on the kit and grid of the session, off the event thread.
 * For one thread.
 */
public final class RoleHunt {
    /** So many of the best are listed. */
    static final int LISTED = 60;

    /**
     * What is asked. The same question on the same kit and grid always has the same answer.
     *
     * @param role what the grooves are to serve
     * @param sticking empty: stickings are searched too
     * @param strokes the length of the stickings
     * @param letters what they are made of
     * @param tries how many recipes are looked at
     * @param seed of the randomness
     */
    public record Question(
            Role role,
            Optional<Sticking> sticking,
            int strokes,
            Set<Letter> letters,
            int tries,
            long seed) {}

    private final SessionModel session;
    private final Tasks tasks;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<Question> asked = Optional.empty();
    private Optional<Outlook> outlook = Optional.empty();
    private Tasks.Running running = () -> {};
    private List<Serving> found = List.of();
    private String line = "";
    private boolean fault;

    /** Searches for a session. */
    public RoleHunt(SessionModel session, Tasks tasks) {
        this.session = session;
        this.tasks = tasks;
    }

    /** Is called when a search begins and when it ends. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Searches; a search under way is dropped. */
    public void search(Question question) {
        running.stop();
        asked = Optional.of(question);
        found = List.of();
        fault = false;
        line = "searching…";
        Outlook watch = new Outlook();
        outlook = Optional.of(watch);
        tell();
        Recipe recipe = session.recipe();
        running =
                tasks.run(
                        "",
                        progress ->
                                RoleSearch.search(
                                        wish(question, recipe),
                                        LISTED,
                                        question.tries(),
                                        question.seed(),
                                        watch.within(progress)),
                        servings -> ended(watch, servings),
                        this::failed);
    }

    private static RoleWish wish(Question question, Recipe recipe) {
        return new RoleWish(
                question.role(),
                recipe.kit(),
                recipe.grid(),
                question.sticking(),
                question.sticking().map(Sticking::size).orElse(question.strokes()),
                question.letters(),
                RoleWeights.DEFAULT);
    }

    private void ended(Outlook watch, List<Serving> servings) {
        outlook = Optional.empty();
        found = servings;
        Question question = asked.orElseThrow();
        String seed = "seed %d, %d tries".formatted(question.seed(), question.tries());
        line =
                servings.isEmpty()
                        ? "nothing found that can be played; " + seed
                        : watch.isStopped()
                                ? "the best %d until it was stopped; %s"
                                        .formatted(servings.size(), seed)
                                : "the best %d for %s; %s"
                                        .formatted(servings.size(), question.role().id(), seed);
        tell();
    }

    private void failed(Exception failure) {
        outlook = Optional.empty();
        fault = true;
        line = failure.getMessage() == null ? "the search failed" : failure.getMessage();
        tell();
    }

    /** Ends the search with what it has found. */
    public void stop() {
        outlook.ifPresent(Outlook::stop);
    }

    /** The question whose answers are shown, or searched for. */
    public Optional<Question> asked() {
        return asked;
    }

    /** How far the search is, from 0 to 1; empty while none is under way. */
    public Optional<Double> part() {
        return outlook.map(Outlook::part);
    }

    /** What was found, the best first. */
    public List<Serving> found() {
        return found;
    }

    /** How the search stands, in one line; empty before the first. */
    public String line() {
        return line;
    }

    /** Whether the line tells of a fault. */
    public boolean isFault() {
        return fault;
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
