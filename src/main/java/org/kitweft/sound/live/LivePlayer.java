package org.kitweft.sound.live;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Phrase;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.sound.AudioLine;
import org.kitweft.sound.MidiOutput;
import org.kitweft.sound.Note;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Player;
import org.kitweft.sound.PlayerListener;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.synth.BuiltIn;
import org.kitweft.sound.synth.NoteStream;

/**
 * The player: takes wishes from any thread and hands them to the sound thread, made ready on the
 * way by two helpers, one for phrases, one for banks, lines and devices, which take longer.
 */
public final class LivePlayer implements Player {
    /** 20 ms: the longest output buffer. */
    static final int BUFFER_FRAMES = NoteStream.RATE / 50;

    private static final int WATCH_MILLISECONDS = 500;

    private static final String WAITING =
            "the sound bank is being made ready; what you play now is heard in a few seconds";

    private final OutputLines lines;
    private final MidiSinks midiSinks;
    private final Listeners listeners = new Listeners();
    private final AtomicInteger wanted = new AtomicInteger();
    private final AtomicInteger plays = new AtomicInteger();
    private final SoundThread sound;
    private final ExecutorService phrases = helper("phrases");
    private final ExecutorService devices = helper("devices");
    private final ScheduledExecutorService timer =
            Executors.newSingleThreadScheduledExecutor(named("timer"));
    private final Future<?> watching;

    private volatile PlaySettings settings = PlaySettings.DEFAULT;
    private volatile @Nullable Playable playable;
    private volatile Optional<String> notice = Optional.empty();
    private volatile Optional<String> bankFault = Optional.empty();
    private volatile boolean waitingForBank = true;

    // Of the devices thread only.
    private Optional<AudioLine> chosenLine = Optional.empty();
    private boolean hasMidi;

    LivePlayer(Bank.Source bank, OutputLines lines, MidiSinks midiSinks) {
        this.lines = lines;
        this.midiSinks = midiSinks;
        this.sound =
                new SoundThread(
                        listeners,
                        wanted,
                        () -> devices.execute(() -> openLine(true)),
                        timer::shutdown);
        this.watching =
                timer.scheduleAtFixedRate(
                        this::watch, WATCH_MILLISECONDS, WATCH_MILLISECONDS, TimeUnit.MILLISECONDS);
        startSound();
        devices.execute(() -> load(bank, true));
        devices.execute(() -> openLine(false));
    }

    // Not for correctness: a part that comes late is heard as a gap, so others should wait for us.
    @SuppressWarnings("ThreadPriorityCheck")
    private void startSound() {
        Thread thread = named("sound").newThread(sound);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    /**
     * Opens a player on the system's lines and devices, with Kitweft's own bank; returns at once,
     * while they are opened. The first time on a machine the bank takes seconds to compute: what is
     * played or struck meanwhile waits for it, and {@link #notice()} says so.
     */
    public static Player open() {
        return open(BuiltIn.ofTheUser());
    }

    /**
     * The same with another bank.
     *
     * @param bank what it sounds with; loaded in the background
     */
    public static Player open(Bank.Source bank) {
        return new LivePlayer(bank, new SystemLines(), new SystemMidi());
    }

    private static ThreadFactory named(String name) {
        return body -> {
            Thread thread = new Thread(body, "kitweft-" + name);
            thread.setDaemon(true);
            return thread;
        };
    }

    /** One thread; what comes after the player was closed is dropped. */
    private static ExecutorService helper(String name) {
        return new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(),
                named(name),
                new ThreadPoolExecutor.DiscardPolicy());
    }

    private void watch() {
        OutputLine hanging = sound.watch().hanging();
        if (hanging != null) {
            devices.execute(hanging::close);
        }
    }

    // On the devices thread.

    private void load(Bank.Source source, boolean first) {
        try {
            use(source);
            bankFault = Optional.empty();
        } catch (IOException e) {
            bankFault = Optional.of(String.valueOf(e.getMessage())); // perhaps nobody listens yet
            if (first) {
                useTheJdks();
            }
        }
        waitingForBank = false;
        tellNotice();
        bankFault.ifPresent(message -> sound.post(() -> listeners.fault(message)));
    }

    private void use(Bank.Source source) throws IOException {
        NoteStream stream = NoteStream.open(source.load());
        sound.post(() -> sound.use(stream));
    }

    private void useTheJdks() {
        try {
            use(Bank::ofTheJdk);
        } catch (IOException e) {
            sound.post(() -> listeners.fault(String.valueOf(e.getMessage())));
        }
    }

    private void tellNotice() {
        Optional<String> now = notice();
        sound.post(() -> listeners.notice(now));
    }

    /**
     * @param asked whether the sound thread waits for it
     */
    private void openLine(boolean asked) {
        try {
            OutputLine line = lines.open(chosenLine, BUFFER_FRAMES);
            notice = Optional.empty();
            sound.post(() -> sound.use(line));
        } catch (LineLostException e) {
            String message = String.valueOf(e.getMessage());
            notice = Optional.of(message);
            if (hasMidi) {
                sound.post(() -> sound.use(new PacedLine(timer)));
            } else {
                sound.post(() -> sound.noLine(message, asked));
            }
        }
        tellNotice();
    }

    private void openMidi(Optional<MidiOutput> output) {
        try {
            MidiSink sink = output.isPresent() ? midiSinks.open(output.get()) : null;
            hasMidi = sink != null;
            sound.post(() -> sound.useMidi(sink, timer));
        } catch (IOException e) {
            sound.post(() -> listeners.fault(String.valueOf(e.getMessage())));
        }
    }

    // The player, on any thread.

    @Override
    public void play() {
        if (playable != null) {
            int number = plays.incrementAndGet();
            if (wanted.compareAndSet(0, number)) {
                // By way of the phrases thread, so that a phrase shown before is there.
                phrases.execute(() -> sound.post(() -> sound.play(number)));
            }
        }
    }

    @Override
    public void stop() {
        wanted.set(0);
        sound.post(sound::stop);
    }

    @Override
    public boolean isPlaying() {
        return wanted.get() != 0;
    }

    @Override
    public void show(Phrase next) {
        show(Playable.of(next));
    }

    @Override
    public void show(Playable next) {
        playable = next;
        prepare();
    }

    @Override
    public void settings(PlaySettings next) {
        settings = next;
        sound.post(() -> sound.level(next.level()));
        prepare();
    }

    private void prepare() {
        phrases.execute(
                () -> {
                    Playable shown = playable;
                    if (shown != null) {
                        Pass pass = new Pass(shown, settings);
                        sound.post(() -> sound.use(pass));
                    }
                });
    }

    @Override
    public PlaySettings settings() {
        return settings;
    }

    @Override
    public void strike(Kit kit, SoundName name, int velocity) {
        Note note = Audition.note(kit, name, velocity);
        sound.post(() -> sound.strike(note, Audition.FRAMES));
    }

    @Override
    public void addListener(PlayerListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeListener(PlayerListener listener) {
        listeners.remove(listener);
    }

    @Override
    public List<AudioLine> lines() {
        return lines.list();
    }

    @Override
    public void useLine(AudioLine line) {
        devices.execute(
                () -> {
                    try {
                        OutputLine opened = lines.open(Optional.of(line), BUFFER_FRAMES);
                        chosenLine = Optional.of(line);
                        notice = Optional.empty();
                        sound.post(() -> sound.use(opened));
                    } catch (LineLostException e) {
                        sound.post(() -> listeners.fault(String.valueOf(e.getMessage())));
                    }
                });
    }

    @Override
    public List<MidiOutput> midiOutputs() {
        return midiSinks.list();
    }

    @Override
    public void useMidiOutput(Optional<MidiOutput> output) {
        devices.execute(() -> openMidi(output));
    }

    @Override
    public void useBank(Path file) {
        devices.execute(() -> load(() -> Bank.read(file), false));
    }

    @Override
    public Optional<String> notice() {
        return notice.or(() -> waitingForBank ? Optional.of(WAITING) : bankFault);
    }

    @Override
    public void close() {
        wanted.set(0);
        watching.cancel(false);
        phrases.shutdown();
        devices.shutdown();
        sound.post(sound::close);
    }
}
