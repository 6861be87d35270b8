package org.kitweft.ui.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.kitweft.band.Backing;
import org.kitweft.band.BandPart;
import org.kitweft.groove.Place;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.session.FaultsFail;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

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

    /** Work that is done when the test says so. */
    private static final class Later implements Tasks {
        private final List<Runnable> waiting = new ArrayList<>();

        @Override
        public <T> Running run(
                String name, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
            Runnable one = () -> Tasks.DIRECT.run(name, work, done, failed);
            waiting.add(one);
            return () -> waiting.remove(one);
        }

        void work() {
            List<Runnable> now = List.copyOf(waiting);
            waiting.clear();
            now.forEach(Runnable::run);
        }
    }

    private void band(Backing backing) {
        session.edit("Band", session.session().with(session.session().draft().with(backing)));
    }

    @Test
    void theBandIsWorkedOutElsewhereAndOnlyTheLastEditIsHeard() {
        Later tasks = new Later();
        PlayModel model =
                new PlayModel(session, new Playhead(), Runnable::run, new FaultsFail(), tasks);
        model.attach(player);
        player.shown.clear();
        band(Backing.DEFAULT.withOn(true));
        band(Backing.DEFAULT.withOn(true).withStyle("swing"));
        assertThat(player.shown).isEmpty();
        assertThat(tasks.waiting).as("the first is no longer wanted").hasSize(1);
        model.play();
        assertThat(player.isPlaying()).as("not before the band is there").isFalse();
        assertThat(model.isPlaying()).isTrue();
        tasks.work();
        assertThat(player.isPlaying()).isTrue();
        assertThat(player.shown).hasSize(1);
        assertThat(player.shown.get(0).band()).extracting(BandPart::name).contains("bass");
        band(Backing.DEFAULT);
        assertThat(player.shown).as("drums alone need no work").hasSize(2);
        assertThat(player.shown.get(1).band()).isEmpty();
    }

    @Test
    void chordsThatCannotBeReadLeaveTheLastOnesSounding() {
        play.attach(player);
        band(Backing.DEFAULT.withOn(true));
        player.shown.clear();
        session.keepEditing(
                "Chords",
                session.session().with(session.session().draft().typed("Dm7 H7 | Cmaj7 %")));
        assertThat(player.shown).isEmpty();
        assertThat(session.session().draft().typed()).isEqualTo("Dm7 H7 | Cmaj7 %");
        assertThat(session.session().draft().fault().orElseThrow().index()).isEqualTo(4);
        session.undo();
        assertThat(session.session().draft().fault()).isEmpty();
    }

    @Test
    void thePlayheadOfAGrooveThatComesRoundStaysInItsBars() {
        play.attach(player);
        band(Backing.DEFAULT.withOn(true));
        play.play();
        eventThread();
        player.listeners.get(0).struck(session.groove().hits(), new Place(3, 2), 0);
        eventThread();
        assertThat(playhead.place()).contains(new Place(1, 2));
        assertThat(playhead.written()).contains(new Place(1, 2));
    }
}
