package org.kitweft.ui.explore;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.groove.Recipe;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/**
 * The possibilities of the session, counted anew off the event thread whenever sticking, kit,
 * limbs, grid, choices or rules change; what is out of date by then is dropped. Single strokes that
 * were moved do not matter: a variation being heard is one of the possibilities. For one thread.
 */
public final class Exploring {
    /** What the count depends on. */
    private record Question(Recipe recipe, Choices choices, List<Rule> rules) {}

    private record Answer(Possibilities possibilities, String contradiction) {}

    private final SessionModel session;
    private final Tasks tasks;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Tasks.Running running = () -> {};
    private Optional<Question> asked = Optional.empty();
    private Optional<Possibilities> found = Optional.empty();
    private String fault = "";
    private boolean counting;
    private Ways ways = Ways.NONE;

    /** Follows a session. */
    public Exploring(SessionModel session, Tasks tasks) {
        this.session = session;
        this.tasks = tasks;
        session.addListener(this::follow);
        follow();
    }

    /** Is called when counting begins, when it ends, and when the ways of strokes are known. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** All variations that keep the rules, once they are counted. */
    public Optional<Possibilities> found() {
        return found;
    }

    /** Why there are none, in one line; empty if there are, or while they are counted. */
    public String fault() {
        return fault;
    }

    /** Whether they are being counted. */
    public boolean isCounting() {
        return counting;
    }

    /** Where the strokes of the variations lie, a moment after they are counted. */
    public Ways ways() {
        return ways;
    }

    private void follow() {
        Session now = session.session();
        Recipe bare = now.recipe().with(now.recipe().voicing().withStrokes(new TreeMap<>()));
        Question question = new Question(bare, now.choicesInUse(), now.rules());
        if (asked.equals(Optional.of(question))) {
            return;
        }
        asked = Optional.of(question);
        running.stop();
        counting = true;
        found = Optional.empty();
        fault = "";
        ways = Ways.NONE;
        tell();
        running =
                tasks.run(
                        "",
                        progress -> answer(question),
                        this::answered,
                        failure -> {
                            counting = false;
                            fault = failure.getMessage() == null ? "" : failure.getMessage();
                            tell();
                        });
    }

    private static Answer answer(Question question) {
        Possibilities possibilities =
                Possibilities.of(question.recipe(), question.choices(), question.rules());
        return new Answer(
                possibilities, possibilities.contradiction().map(c -> c.words()).orElse(""));
    }

    private void answered(Answer answer) {
        counting = false;
        found = Optional.of(answer.possibilities());
        fault = answer.contradiction();
        tell();
        running =
                tasks.run("", progress -> ways(answer.possibilities()), this::counted, this::lost);
    }

    private static Ways ways(Possibilities possibilities) {
        return new Ways(possibilities.total(), possibilities.waysPerStroke());
    }

    private void counted(Ways found) {
        ways = found;
        tell();
    }

    /** The list is there all the same; only the shading is not. */
    private void lost(Exception failure) {
        System.getLogger(Exploring.class.getName())
                .log(System.Logger.Level.WARNING, "ways of strokes not counted", failure);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
