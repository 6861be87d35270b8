package org.kitweft.ui.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Place;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class PlayModelTest {
    private final SessionModel session = new SessionModel(Session.opening().typed("RL"));
    private final Playhead playhead = new Playhead();
    private final List<String> notes = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final List<Runnable> later = new ArrayList<>();
    private final FakePlayer player = new FakePlayer();
    private final PlayModel play =
            new PlayModel(
                    session,
                    playhead,
                    later::add,
                    new Notices() {
                        @Override
                        public void note(String line) {
                            notes.add(line);
                        }

                        @Override
                        public void fault(String line) {
                            faults.add(line);
                        }
                    });

    private void eventThread() {
        List<Runnable> now = List.copyOf(later);
        later.clear();
        now.forEach(Runnable::run);
    }

    @Test
    void playPressedBeforeThePlayerIsThereIsDoneWhenItIs() {
        play.toggle();
        assertThat(play.isPlaying()).isTrue();
        play.attach(player);
        assertThat(player.asked).containsExactly("tempo 90", "show RL", "play");
    }

    @Test
    void editsReachThePlayerAndOthersDoNot() {
        play.attach(player);
        player.asked.clear();
        session.edit("Tempo", session.session().with(new Tempo(120)));
        session.edit("Typing", session.session().typed("RLL"));
        session.edit("Typing", session.session().typed("RLLX"));
        assertThat(player.asked).containsExactly("tempo 120", "show RLL");
    }

    @Test
    void thePlayheadMovesOnTheEventThreadOnly() {
        play.attach(player);
        play.play();
        player.listeners.get(0).struck(session.groove().hits(), new Place(1, 1), 0);
        assertThat(playhead.place()).isEmpty();
        eventThread();
        assertThat(playhead.place()).contains(new Place(1, 1));
        play.stop();
        eventThread();
        assertThat(playhead.place()).isEmpty();
    }

    @Test
    void aFaultOfThePlayerBecomesANotice() {
        play.attach(player);
        player.listeners.get(0).fault("the line is gone");
        eventThread();
        assertThat(faults).containsExactly("the line is gone");
    }

    @Test
    void whyNothingIsHeardIsToldAndAlsoWhenThatIsOver() {
        play.attach(player);
        player.listeners.get(0).notice(Optional.of("no audio device: none here"));
        eventThread();
        assertThat(notes).last().isEqualTo("no audio device: none here");
        player.listeners.get(0).notice(Optional.empty());
        eventThread();
        assertThat(notes).last().isEqualTo("The sound is ready: the space bar plays.");
    }

    @Test
    void aPlayerThatComesAfterTheWindowIsClosedIsClosedToo() {
        play.close();
        play.attach(player);
        assertThat(player.asked).containsExactly("close");
    }
}
