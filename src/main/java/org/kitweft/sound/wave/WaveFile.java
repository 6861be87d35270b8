package org.kitweft.sound.wave;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import org.kitweft.file.SafeFile;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.synth.NoteStream;
import org.kitweft.sound.synth.Render;

/**
 * Writes timelines as sound files: WAV, 44.1 kHz, 16 bit, stereo, from the first note until the
 * last one has rung out.
 *
 * <p>Nothing clips, and files of one lesson are about equally loud: the sound is rendered and put
 * aside, and then written with the gain that brings its highest peak to {@value #PEAK} of full
 * scale, 3 dB below it. Dynamics stay as they are. The level of live playing does not enter.
 */
public final class WaveFile {
    /** What the highest peak is brought to. */
    static final double PEAK = 0.708;

    /** The longest ringing out, in seconds. */
    private static final int MOST_TAIL = 8;

    /** What is taken for silence, 80 dB below full scale, if it lasts for so many frames. */
    private static final double SILENCE = 1e-4;

    private static final int SILENT_FRAMES = NoteStream.RATE / 4;
    private static final int PART = 4096;

    /** The share of rendering in the work; measured: writing takes a twentieth of the time. */
    private static final double RENDERING = 0.95;

    private final Timeline timeline;
    private final Bank bank;
    private final Progress progress;

    private WaveFile(Timeline timeline, Bank bank, Progress progress) {
        this.timeline = timeline;
        this.bank = bank;
        this.progress = progress;
    }

    /**
     * Writes a file. May take long; tells the progress.
     *
     * @param replace whether a file that exists is replaced
     * @throws java.nio.file.FileAlreadyExistsException if it exists and is not to be replaced
     * @throws IOException if it cannot be written, or the progress stopped it, in a sentence that
     *     names it; then no new file is left
     */
    public static void write(
            Timeline timeline, Bank bank, Path target, boolean replace, Progress progress)
            throws IOException {
        SafeFile.write(
                target,
                replace ? Existing.REPLACE : Existing.KEEP,
                new WaveFile(timeline, bank, progress)::writeTo);
    }

    private void writeTo(OutputStream out) throws IOException {
        try (Samples rendered = Samples.empty()) {
            Measure measure = render(rendered);
            if (measure.frames > WaveHeader.MOST_FRAMES) {
                throw new IOException(
                        "%d minutes are more than a WAV file holds"
                                .formatted(measure.frames / NoteStream.RATE / 60));
            }
            double gain = measure.peak > 0 ? PEAK / measure.peak : 1;
            out.write(WaveHeader.of(measure.frames));
            rendered.rewind();
            float[] samples = new float[PART * NoteStream.CHANNELS];
            for (long at = 0; at < measure.frames; at += PART) {
                tell(RENDERING + (1 - RENDERING) * at / measure.frames);
                int frames = (int) Math.min(PART, measure.frames - at);
                rendered.read(samples, frames * NoteStream.CHANNELS);
                out.write(pcm(samples, frames, gain));
            }
        }
        tell(1);
    }

    private static byte[] pcm(float[] samples, int frames, double gain) {
        ByteBuffer bytes =
                ByteBuffer.allocate(frames * WaveHeader.BYTES_PER_FRAME)
                        .order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < frames * NoteStream.CHANNELS; i++) {
            bytes.putShort((short) Math.round(samples[i] * gain * Short.MAX_VALUE));
        }
        return bytes.array();
    }

    private record Measure(long frames, double peak) {}

    private Measure render(Samples rendered) throws IOException {
        try (NoteStream stream = NoteStream.open(bank)) {
            Render render = new Render(timeline, stream);
            float[] samples = new float[PART * NoteStream.CHANNELS];
            double peak = 0;
            long heard = 0;
            long most = render.frames() + MOST_TAIL * NoteStream.RATE;
            long at = 0;
            while (at < render.frames() || (at < most && at - heard < SILENT_FRAMES)) {
                tell(RENDERING * at / most);
                render.read(samples, PART);
                rendered.add(samples, samples.length);
                for (int i = 0; i < samples.length; i++) {
                    double size = Math.abs(samples[i]);
                    peak = Math.max(peak, size);
                    if (size > SILENCE) {
                        heard = at + i / NoteStream.CHANNELS + 1;
                    }
                }
                at += PART;
            }
            return new Measure(Math.max(render.frames(), heard), peak);
        }
    }

    private void tell(double part) throws InterruptedIOException {
        if (!progress.reached(part)) {
            throw new InterruptedIOException("stopped before it was done");
        }
    }
}
