package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.kitweft.sound.AudioLine;

/** Lines that keep what they are given and take as many parts as the test allows. */
final class FakeLines implements OutputLines {
    static final int BUFFER = 882;

    /** All that was written, to whichever line. */
    final List<byte[]> written = Collections.synchronizedList(new ArrayList<>());

    /** No line is to be had while true. */
    volatile boolean none;

    /** Writes that lines opened from now on take before they fail. */
    volatile int failAfter = Integer.MAX_VALUE;

    /** Parts that may be written; a writer waits for more. */
    final Semaphore room = new Semaphore(0);

    final AtomicInteger opened = new AtomicInteger();
    final AtomicInteger closed = new AtomicInteger();

    @Override
    public List<AudioLine> list() {
        return none ? List.of() : List.of(new AudioLine("fake", "Fake line"));
    }

    @Override
    public OutputLine open(Optional<AudioLine> line, int bufferFrames) throws LineLostException {
        if (none) {
            throw new LineLostException("no audio device: none here");
        }
        opened.incrementAndGet();
        return new FakeLine(failAfter);
    }

    /** Everything that was written, as samples of left and right in turn. */
    float[] samples() {
        synchronized (written) {
            int length = written.stream().mapToInt(bytes -> bytes.length / 2).sum();
            float[] samples = new float[length];
            int at = 0;
            for (byte[] bytes : written) {
                for (int i = 0; i < bytes.length; i += 2) {
                    samples[at++] = ((bytes[i] & 0xFF) | (bytes[i + 1] << 8)) / 32_768f;
                }
            }
            return samples;
        }
    }

    private final class FakeLine implements OutputLine {
        private int left;
        private long frames;
        private volatile boolean isClosed;

        FakeLine(int left) {
            this.left = left;
        }

        @Override
        public int bufferFrames() {
            return BUFFER;
        }

        @Override
        public void write(byte[] bytes) throws LineLostException {
            room.acquireUninterruptibly();
            if (isClosed || left-- <= 0) {
                throw new LineLostException("the audio line was taken away");
            }
            written.add(bytes);
            frames += bytes.length / 4;
        }

        @Override
        public long framesHeard() {
            return Math.max(0, frames - BUFFER);
        }

        @Override
        public void rest() {
            frames = frames + BUFFER;
        }

        @Override
        public void close() {
            isClosed = true;
            closed.incrementAndGet();
            room.release();
        }
    }
}
