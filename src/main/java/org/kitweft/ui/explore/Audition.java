package org.kitweft.ui.explore;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

/**
 * Lets what is chosen in a list be heard on the kit: at once while nothing plays, else with the
 * next bar, so that the beat is not broken. The last one chosen before the bar line wins. An item
 * of the lesson that is open stays as it is until what is heard is taken. For one thread.
 */
public final class Audition {
    private final SessionModel session;
    private final Playhead playhead;
    private Optional<Runnable> next = Optional.empty();

    /** Auditions in a session, by the bar lines of a playhead. */
    public Audition(SessionModel session, Playhead playhead) {
        this.session = session;
        this.playhead = playhead;
        playhead.addListener(this::follow);
    }

    void hear(Possibilities possibilities, Variation variation) {
        hear(
                "Choose variation",
                now -> now.with(now.recipe().with(possibilities.recipe(variation).voicing())));
    }

    /**
     * Makes a change, to be heard, once it is its time.
     *
     * @param name of the edit, for people; those of one name in a row are undone together
     * @param change from the session of then to the next
     */
    public void hear(String name, UnaryOperator<Session> change) {
        Runnable take = () -> session.hear(name, change.apply(session.session()));
        if (playhead.place().isEmpty()) {
            take.run();
        } else {
            next = Optional.of(take);
        }
    }

    /** Takes what is heard, and what waits for the bar line at once. */
    public void take() {
        now();
        session.take();
    }

    private void now() {
        Optional<Runnable> take = next;
        next = Optional.empty();
        take.ifPresent(Runnable::run);
    }

    /** An edit is heard from the next step on: made at the last step of a bar, at the bar line. */
    private void follow() {
        boolean atTheEnd =
                playhead.place()
                        .map(p -> p.step() == session.groove().grid().stepsPerBar())
                        .orElse(true);
        if (atTheEnd) {
            now();
        }
    }
}
