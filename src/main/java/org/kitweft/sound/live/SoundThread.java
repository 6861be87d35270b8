package org.kitweft.sound.live;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Practice;
import org.kitweft.sound.Note;
import org.kitweft.sound.synth.NoteStream;

/**
 * The thread that makes sound: asks the playhead for notes, the synthesizer for samples, and writes
 * them to the line, part by part; the line's buffer sets the pace. All its state is its own; others
 * {@link #post} what is to be done between two parts.
 *
 * <p>Where there is nothing to sound it waits and uses no time at all.
 */
final class SoundThread implements Runnable {
    /** Frames of a part: 4 ms, so that an edit waits no longer. */
    static final int PART = 192;

    /** Silence between the press of a key and the first note: the line has time to start. */
    private static final int LEAD_FRAMES = NoteStream.RATE / 50;

    /** Samples below this, 80 dB below full scale, for so long are silence. */
    private static final double SILENCE = 1e-4;

    private static final int SILENT_FRAMES = NoteStream.RATE / 4;
    private static final int LONGEST_RINGING = 8 * NoteStream.RATE;

    private static final int LONGEST_ROOM = 2 * NoteStream.RATE;
    private static final long NOT_STOPPING = -1;

    private final BlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();
    private final Listeners listeners;
    private final AtomicInteger wanted;
    private final Runnable lineWanted;
    private final Runnable ended;
    private final Sounder sounder = new Sounder();
    private final Samples samples = new Samples();
    private final Keys keys = new Keys(new Outputs());
    private final Deque<Playhead.Lit> lights = new ArrayDeque<>();
    private final float[] part = new float[PART * NoteStream.CHANNELS];
    private final Watch watch = new Watch();

    private @Nullable OutputLine line;
    private @Nullable MidiSender midi;
    private @Nullable Pass pass;
    private @Nullable Playhead playhead;
    private @Nullable Runnable waitingStrike; // the last one before there was a bank
    private Practice.@Nullable Loop how; // of the loop that is heard, as it was told
    private long loop;
    private double level;
    private long lineStart;
    private int waitingPlay;
    private int playing;
    private long ringingSince;
    private long lastHeard;
    private boolean resting = true;
    private long stopFrame = NOT_STOPPING;
    private boolean lineAsked = true; // the first one is looked for unasked
    private boolean closed;

    /**
     * @param wanted the number of the playing that is wanted, 0 if none
     * @param lineWanted asks for a line to be opened
     * @param ended is called when all devices were given back
     */
    SoundThread(Listeners listeners, AtomicInteger wanted, Runnable lineWanted, Runnable ended) {
        this.listeners = listeners;
        this.wanted = wanted;
        this.lineWanted = lineWanted;
        this.ended = ended;
    }

    /** Has something done on this thread. */
    void post(Runnable what) {
        posted.add(what);
    }

    /** Watches over writing; see there. */
    Watch watch() {
        return watch;
    }

    @Override
    public void run() {
        try {
            while (!closed) {
                Runnable next = isResting() ? posted.take() : posted.poll();
                if (next != null) {
                    next.run();
                } else {
                    sound();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException e) {
            listeners.fault("sound has stopped by a fault of the program; start it again");
            throw e;
        } finally {
            giveBack();
        }
    }

    private void giveBack() {
        closed = true;
        wanted.set(0);
        for (Runnable late = posted.poll(); late != null; late = posted.poll()) {
            late.run(); // a line that was just being opened is closed again
        }
        sounder.close();
        closeLine();
        if (midi != null) {
            midi.close();
        }
        ended.run();
    }

    private boolean isResting() {
        return resting || line == null || !sounder.isReady();
    }

    // What is posted.

    void close() {
        closed = true;
    }

    void use(NoteStream stream) {
        sounder.use(stream);
        Runnable strike = waitingStrike;
        waitingStrike = null;
        if (strike != null) {
            strike.run();
        }
        playIfReady();
    }

    void use(OutputLine opened) {
        if (closed) {
            opened.close();
            return;
        }
        closeLine();
        lineAsked = false;
        line = opened;
        lineStart = sounder.rendered() - opened.framesHeard();
        playIfReady();
    }

    /**
     * @param asked whether it was for us that a line was looked for; if not, and one is needed by
     *     now, we ask: a MIDI output may have been chosen meanwhile
     */
    void noLine(String message, boolean asked) {
        lineAsked = false;
        if (!asked) {
            playIfReady();
            return;
        }
        if (waitingPlay != 0) {
            wanted.compareAndSet(waitingPlay, 0);
            waitingPlay = 0;
            listeners.fault(message);
            listeners.state(false);
            listeners.silent();
        }
    }

    void useMidi(@Nullable MidiSink sink, ScheduledExecutorService timer) {
        if (midi != null) {
            midi.close();
        }
        midi = sink == null ? null : new MidiSender(sink, timer, this::heard);
    }

    void use(Pass next) {
        pass = next;
        level(next.settings().level());
        sounder.use(next.settings().mix(), next.channels());
        if (playhead != null) {
            playhead.change(next);
        }
    }

    void level(double to) {
        level = to;
    }

    void play(int number) {
        waitingPlay = number;
        playIfReady();
    }

    private void playIfReady() {
        if (waitingPlay == 0 || wanted.get() != waitingPlay || pass == null) {
            return;
        }
        if (line == null) {
            askForLine();
        } else if (sounder.isReady()) {
            playing = waitingPlay;
            waitingPlay = 0;
            wake();
            keys.releaseAll(sounder.rendered() + Sounder.AHEAD);
            lights.clear();
            long start = sounder.rendered() + Sounder.AHEAD + PART + LEAD_FRAMES;
            playhead = new Playhead(pass, start);
            how = null;
            listeners.state(true);
        }
    }

    private void askForLine() {
        if (!lineAsked) {
            lineAsked = true;
            lineWanted.run();
        }
    }

    void stop() {
        waitingPlay = 0;
        if (!resting) {
            stopFrame = sounder.rendered();
            playhead = null;
            lights.clear();
            keys.releaseAll(stopFrame + Sounder.AHEAD);
            if (midi != null) {
                midi.silence();
            }
        }
        ended();
    }

    void strike(Note note, int frames) {
        if (line == null) {
            askForLine();
        }
        if (!sounder.isReady()) {
            waitingStrike = () -> strike(note, frames);
            return;
        }
        wake();
        long frame = sounder.rendered() + Sounder.AHEAD;
        keys.strike(frame, frame + frames, note);
    }

    private void wake() {
        if (resting && line != null) {
            lineStart = sounder.rendered() - line.framesHeard();
        }
        if (stopFrame != NOT_STOPPING) {
            sounder.silence();
            stopFrame = NOT_STOPPING;
        }
        resting = false;
        ringingSince = sounder.rendered();
        lastHeard = sounder.rendered();
    }

    // What is done over and over.

    private void sound() {
        long end = sounder.rendered() + PART + Sounder.AHEAD;
        if (playhead != null) {
            Playhead.Frames next = playhead.advance(end);
            next.notes().forEach(note -> keys.strike(note.frame(), note.endFrame(), note.note()));
            lights.addAll(next.cues());
        }
        keys.release(end);
        sounder.read(part, PART);
        listen();
        write(samples.bytes(part, PART, stopFrame == NOT_STOPPING ? level : 0));
        light();
        endOrRest();
    }

    private void listen() {
        for (float sample : part) {
            if (Math.abs(sample) > SILENCE) {
                lastHeard = sounder.rendered();
                return;
            }
        }
    }

    private void write(byte[] bytes) {
        OutputLine to = line;
        if (to == null) {
            return;
        }
        try {
            watch.begin(to);
            to.write(bytes);
        } catch (LineLostException e) {
            closeLine();
            playhead = null;
            lights.clear();
            keys.releaseAll(sounder.rendered() + Sounder.AHEAD);
            sounder.silence();
            resting = true;
            stopFrame = NOT_STOPPING;
            listeners.fault(e.getMessage() + "; play again when it is back");
            ended();
            listeners.silent();
        } finally {
            watch.end();
        }
    }

    /**
     * The frame that is heard now; what may still be in the line's buffer is not, whatever it says.
     */
    private long heard() {
        long rendered = sounder.rendered();
        return line == null
                ? rendered
                : Math.min(rendered - line.bufferFrames(), lineStart + line.framesHeard());
    }

    private void light() {
        long heard = heard();
        while (!lights.isEmpty() && lights.getFirst().frame() <= heard) {
            Playhead.Lit lit = lights.removeFirst();
            if (loop != lit.loop() || !lit.how().equals(how)) {
                loop = lit.loop();
                how = lit.how();
                listeners.loop(Math.toIntExact(loop + 1), lit.how());
            }
            listeners.struck(lit.cue());
        }
    }

    private void endOrRest() {
        long now = sounder.rendered();
        if (playhead != null) {
            if (heard() < playhead.endFrame()) {
                return;
            }
            playhead = null;
            ringingSince = now;
            ended();
        }
        int buffer = line == null ? 0 : line.bufferFrames();
        boolean stopped = stopFrame != NOT_STOPPING && now - stopFrame > buffer + PART;
        boolean silent = now - lastHeard > Math.max(SILENT_FRAMES, buffer);
        if (stopped || silent || now - ringingSince > LONGEST_RINGING) {
            rest();
        }
    }

    private void rest() {
        sounder.silence();
        clearTheRoom();
        resting = true;
        stopFrame = NOT_STOPPING;
        if (line != null) {
            line.rest();
        }
        listeners.silent();
    }

    /** Lets the reverberation fade unheard, or it would be heard when sound begins again. */
    private void clearTheRoom() {
        long begun = sounder.rendered();
        do {
            sounder.read(part, PART);
            listen();
        } while (lastHeard == sounder.rendered() && lastHeard - begun < LONGEST_ROOM);
    }

    private void ended() {
        if (playing != 0) {
            wanted.compareAndSet(playing, 0);
            playing = 0;
            listeners.state(false);
        }
    }

    private void closeLine() {
        if (line != null) {
            line.close();
            line = null;
        }
    }

    /** Notes go to the synthesizer and to the MIDI output. */
    private final class Outputs implements NoteSink {
        @Override
        public void on(long frame, Note note) {
            sounder.on(frame, note);
            if (midi != null) {
                midi.on(frame, note);
            }
        }

        @Override
        public void off(long frame, Note note) {
            sounder.off(frame, note);
            if (midi != null) {
                midi.off(frame, note);
            }
        }
    }
}
