package org.kitweft.ui.explore;

import java.util.Optional;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.SessionModel;

/**
 * Puts a variation on the kit: at once while nothing plays, else with the next bar, so that the
 * beat is not broken. The last one chosen before the bar line wins. For one thread.
 */
final class Audition {
    private final SessionModel session;
    private final Playhead playhead;
    private Optional<Runnable> next = Optional.empty();

    Audition(SessionModel session, Playhead playhead) {
        this.session = session;
        this.playhead = playhead;
        playhead.addListener(this::follow);
    }

    void hear(Possibilities possibilities, Variation variation) {
        Runnable take =
                () ->
                        session.keepEditing(
                                "Choose variation",
                                session.session()
                                        .with(
                                                session.recipe()
                                                        .with(
                                                                possibilities
                                                                        .recipe(variation)
                                                                        .voicing())));
        if (playhead.place().isEmpty()) {
            take.run();
        } else {
            next = Optional.of(take);
        }
    }

    /** An edit is heard from the next step on: made at the last step of a bar, at the bar line. */
    private void follow() {
        boolean atTheEnd =
                playhead.place()
                        .map(p -> p.step() == session.groove().grid().stepsPerBar())
                        .orElse(true);
        if (atTheEnd && next.isPresent()) {
            Runnable take = next.get();
            next = Optional.empty();
            take.run();
        }
    }
}
