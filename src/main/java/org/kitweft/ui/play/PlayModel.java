package org.kitweft.ui.play;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Velocity;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Player;
import org.kitweft.sound.PlayerListener;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/**
 * The player as the window sees it: it follows each edit of the session, and what the player tells
 * on its own thread crosses over to the event thread here and nowhere else.
 *
 * <p>The player comes later than the window; play pressed before that is done as soon as it is
 * here. For one thread, the event thread.
 */
public final class PlayModel implements AutoCloseable {
    private final SessionModel session;
    private final Playhead playhead;
    private final Executor eventThread;
    private final Notices notices;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<Player> player = Optional.empty();
    private PlaySettings settings;
    private Optional<HeardLoop> heardLoop = Optional.empty();
    private final Tasks tasks;
    private Programme programme;
    private Optional<Programme> shown = Optional.empty();
    private Optional<Tasks.Running> working = Optional.empty();
    private boolean playing;
    private Optional<String> told = Optional.empty();
    private boolean wanted;
    private boolean closed;

    /** Follows a session, silent as yet; a band is worked out at once. */
    public PlayModel(
            SessionModel session, Playhead playhead, Executor eventThread, Notices notices) {
        this(session, playhead, eventThread, notices, Tasks.DIRECT);
    }

    /**
     * Follows a session, silent as yet.
     *
     * @param eventThread runs things on the event thread, later
     * @param tasks where the band's notes are worked out
     */
    public PlayModel(
            SessionModel session,
            Playhead playhead,
            Executor eventThread,
            Notices notices,
            Tasks tasks) {
        this.tasks = tasks;
        this.programme = Programme.of(session);
        this.session = session;
        this.playhead = playhead;
        this.eventThread = eventThread;
        this.notices = notices;
        this.settings = asEdited(PlaySettings.DEFAULT);
        session.addListener(this::follow);
    }

    /** The player is here. */
    public void attach(Player opened) {
        if (closed) {
            opened.close();
            return;
        }
        player = Optional.of(opened);
        opened.addListener(new Crossing());
        opened.settings(settings);
        tell(opened.notice());
        if (programme.band().isPresent()) {
            heard(programme, programme.drums()); // at once, for the band may take a while
        }
        prepare();
        changed();
    }

    /** Says why nothing is heard yet, and when that is over. */
    private void tell(Optional<String> notice) {
        if (notice.isPresent()) {
            notices.note(notice.get());
        } else if (told.isPresent()) {
            notices.note("The sound is ready: the space bar plays.");
        }
        told = notice;
    }

    /** The player, once it is here. */
    public Optional<Player> player() {
        return player;
    }

    /** Is called after each change of settings or state. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Whether something plays, or will as soon as it can. */
    public boolean isPlaying() {
        return playing || wanted;
    }

    /** Plays, or stops. */
    public void toggle() {
        if (isPlaying()) {
            stop();
        } else {
            play();
        }
    }

    /** Plays from the start. */
    public void play() {
        if (player.isPresent() && working.isEmpty()) {
            player.get().play();
        } else {
            wanted = true;
            changed();
        }
    }

    /** Stops. */
    public void stop() {
        wanted = false;
        player.ifPresent(Player::stop);
        changed();
    }

    /** The loop that is heard; empty while nothing plays. */
    public Optional<HeardLoop> heardLoop() {
        return heardLoop;
    }

    /** How it plays. */
    public PlaySettings settings() {
        return settings;
    }

    /** Changes how it plays; tempo, mix and bars belong to the session and are changed there. */
    public void change(UnaryOperator<PlaySettings> change) {
        PlaySettings next = change.apply(settings);
        if (!next.equals(settings)) {
            settings = next;
            player.ifPresent(p -> p.settings(next));
            changed();
        }
    }

    /** Where a step of what is written stands in the grid, if it is there. */
    public Optional<Place> inGrid(Place written) {
        return Programme.of(session).inGrid(written);
    }

    /** What plays, all bars of it; may take a while, so call what is returned off this thread. */
    public Supplier<Playable> whole() {
        return Programme.of(session)::playable;
    }

    /**
     * The bars of {@link #whole()}, known at once: a groove comes round as often as its band needs.
     */
    public Phrase wholeBars() {
        return Programme.of(session).drums().phrase();
    }

    /** Lets a sound be heard, unless something plays already. */
    public void audition(Kit kit, SoundName sound) {
        if (!isPlaying()) {
            player.ifPresent(p -> p.strike(kit, sound, Velocity.of(Dynamic.PLAIN)));
        }
    }

    private PlaySettings asEdited(PlaySettings before) {
        Session now = session.session();
        return before.withTempo(now.tempo())
                .withMix(now.playing().mix())
                .withStretch(now.playing().stretch());
    }

    private void follow() {
        change(this::asEdited);
        Programme next = Programme.of(session);
        boolean sounds = !next.soundsLike(programme);
        programme = next;
        if (sounds) {
            prepare();
        } else if (working.isEmpty()) {
            shown = shown.map(s -> next); // the grid shows something else of the same
        }
    }

    /** Works out what plays and shows it to the player; the band off this thread. */
    private void prepare() {
        working.ifPresent(Tasks.Running::stop);
        working = Optional.empty();
        if (player.isEmpty()) {
            return;
        }
        Programme now = programme;
        if (now.band().isEmpty()) {
            heard(now, now.playable());
            return;
        }
        boolean[] done = new boolean[1];
        Tasks.Running running =
                tasks.run(
                        "",
                        progress -> now.playable(),
                        playable -> {
                            done[0] = true;
                            working = Optional.empty();
                            heard(programme.soundsLike(now) ? programme : now, playable);
                        },
                        failure -> {
                            done[0] = true;
                            working = Optional.empty();
                            notices.fault("The band does not play: " + failure.getMessage());
                            heard(now, now.drums());
                        });
        if (!done[0]) {
            working = Optional.of(running);
        }
    }

    private void heard(Programme now, Playable playable) {
        shown = Optional.of(now);
        player.ifPresent(p -> p.show(playable));
        if (wanted && working.isEmpty()) {
            wanted = false;
            player.ifPresent(Player::play);
        }
    }

    private void light(Place told, List<Hit> hits) {
        shown.ifPresent(s -> s.written(told).ifPresent(w -> playhead.at(w, s.inGrid(w), hits)));
    }

    private void changed() {
        listeners.forEach(Runnable::run);
    }

    /** Stops and gives the devices back. */
    @Override
    public void close() {
        closed = true;
        player.ifPresent(Player::close);
        player = Optional.empty();
    }

    /** From the sound thread to the event thread. */
    private final class Crossing implements PlayerListener {
        @Override
        public void struck(List<Hit> hits, Place place, long tick) {
            List<Hit> copy = List.copyOf(hits);
            eventThread.execute(
                    () -> {
                        if (playing) {
                            light(place, copy);
                        }
                    });
        }

        @Override
        public void loop(int number, Practice.Loop loop) {
            eventThread.execute(
                    () -> {
                        if (playing) {
                            heardLoop = Optional.of(new HeardLoop(number, loop));
                            changed();
                        }
                    });
        }

        @Override
        public void state(boolean now) {
            eventThread.execute(
                    () -> {
                        playing = now;
                        if (now) {
                            // It is heard, whatever was said before.
                            notices.note("");
                        } else {
                            playhead.gone();
                            heardLoop = Optional.empty();
                        }
                        changed();
                    });
        }

        @Override
        public void notice(Optional<String> why) {
            eventThread.execute(
                    () -> {
                        if (!why.equals(told)) {
                            tell(why);
                        }
                    });
        }

        @Override
        public void fault(String message) {
            eventThread.execute(() -> notices.fault(message));
        }
    }
}
