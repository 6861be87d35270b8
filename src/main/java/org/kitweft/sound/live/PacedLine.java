package org.kitweft.sound.live;

import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.kitweft.sound.synth.NoteStream;

/**
 * A line that nobody hears and that takes frames at the pace of a real one: keeps time for external
 * MIDI output where there is no audio device.
 */
final class PacedLine implements OutputLine {
    private static final int BUFFER_FRAMES = NoteStream.RATE / 50;
    private static final int BEAT_FRAMES = NoteStream.RATE / 225;

    private final Semaphore room = new Semaphore(BUFFER_FRAMES);
    private final Future<?> beat;
    private volatile boolean closed;
    private final AtomicLong written = new AtomicLong();

    PacedLine(ScheduledExecutorService timer) {
        long period = BEAT_FRAMES * TimeUnit.SECONDS.toNanos(1) / NoteStream.RATE;
        this.beat = timer.scheduleAtFixedRate(this::beat, period, period, TimeUnit.NANOSECONDS);
    }

    private void beat() {
        int most = BUFFER_FRAMES - room.availablePermits();
        room.release(Math.min(BEAT_FRAMES, most));
    }

    @Override
    public int bufferFrames() {
        return BUFFER_FRAMES;
    }

    @Override
    public void write(byte[] bytes) throws LineLostException {
        int frames = bytes.length / (NoteStream.CHANNELS * Short.BYTES);
        room.acquireUninterruptibly(frames);
        if (closed) {
            throw new LineLostException("the pace for MIDI output was closed");
        }
        written.addAndGet(frames);
    }

    @Override
    public long framesHeard() {
        return Math.max(0, written.get() - (BUFFER_FRAMES - room.availablePermits()));
    }

    @Override
    public void rest() {
        // Nothing to do: silence costs nothing here.
    }

    @Override
    public void close() {
        closed = true;
        beat.cancel(false);
        room.release(BUFFER_FRAMES);
    }
}
