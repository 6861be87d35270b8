package org.kitweft.sound.live;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Note;
import org.kitweft.sound.Part;
import org.kitweft.sound.synth.NoteStream;

/**
 * The synthesizer's part of the sound thread: frames are counted on when the bank is exchanged.
 * What the former bank still sounds fades within one part.
 */
final class Sounder implements NoteSink, AutoCloseable {
    private record Sent(long frame, Note note) {}

    /**
     * Notes are sent for frames up to here, seen from {@link #rendered()}; ends go a frame early.
     */
    static final int AHEAD = NoteStream.AHEAD + 1;

    private final Deque<Sent> notRead = new ArrayDeque<>();
    private @Nullable NoteStream stream;
    private @Nullable NoteStream former;
    private Mix mix = Mix.DEFAULT;
    private Map<Part, List<Integer>> channels = Map.of();
    private long streamStart;
    private long rendered;

    boolean isReady() {
        return stream != null;
    }

    /** Frames read so far. */
    long rendered() {
        return rendered;
    }

    /** Sounds with another, newly opened stream from now on. */
    void use(NoteStream newer) {
        if (former != null) {
            former.close();
        }
        former = stream;
        stream = newer;
        streamStart = rendered;
        mix();
        for (Sent sent : notRead) {
            begin(newer, sent.frame, sent.note);
        }
    }

    /** Mixes like this from the next block on; the parts' channels by part. */
    void use(Mix next, Map<Part, List<Integer>> nextChannels) {
        mix = next;
        channels = nextChannels;
        mix();
    }

    private void mix() {
        NoteStream now = stream;
        if (now != null) {
            channels.forEach(
                    (part, all) -> all.forEach(channel -> now.mix(part, channel, mix.strip(part))));
        }
    }

    @Override
    public void on(long frame, Note note) {
        if (stream != null) {
            begin(stream, frame, note);
            notRead.add(new Sent(frame, note));
        }
    }

    private void begin(NoteStream where, long frame, Note note) {
        long at = Math.max(0, frame - streamStart);
        where.on(at, note);
    }

    @Override
    public void off(long frame, Note note) {
        if (stream != null) {
            stream.off(Math.max(0, frame - streamStart), note);
        }
    }

    /** Silences everything at once. */
    void silence() {
        if (stream != null) {
            stream.silence();
        }
    }

    /** Reads frames into an array of left and right in turn; call only when ready. */
    void read(float[] samples, int frames) {
        NoteStream now = stream;
        if (now == null) {
            throw new IllegalStateException("there is no bank to sound with yet");
        }
        now.read(samples, frames);
        fadeFormer(samples, frames);
        rendered += frames;
        notRead.removeIf(sent -> sent.frame < rendered);
    }

    private void fadeFormer(float[] samples, int frames) {
        if (former == null) {
            return;
        }
        float[] old = new float[frames * NoteStream.CHANNELS];
        former.read(old, frames);
        former.close();
        former = null;
        for (int i = 0; i < old.length; i++) {
            samples[i] += old[i] * (old.length - i) / old.length;
        }
    }

    @Override
    public void close() {
        if (former != null) {
            former.close();
        }
        if (stream != null) {
            stream.close();
        }
    }
}
