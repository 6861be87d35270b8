package org.kitweft.sound.synth;

import com.sun.media.sound.AudioSynthesizer;
import com.sun.media.sound.SoftSynthesizer;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import org.kitweft.kit.Sound;
import org.kitweft.sound.Note;
import org.kitweft.sound.Part;
import org.kitweft.sound.Strip;

/**
 * Notes in, samples out: the JDK's synthesizer read as a stream. Time is counted in frames from the
 * opening; a note's sound begins on the very frame it is sent for.
 *
 * <p>The synthesizer works in blocks and answers late by a constant number of frames, which this
 * class takes off. So it has to be told ahead: before {@code n} frames are read, all notes before
 * {@code position() + n + AHEAD} must be sent, and none may be sent for a frame before {@link
 * #earliest()}.
 *
 * <p>Not for several threads at once.
 */
public final class NoteStream implements AutoCloseable {
    /** Frames in a second. */
    public static final int RATE = 44_100;

    /** Left and right. */
    public static final int CHANNELS = 2;

    /**
     * Frames in a block of the synthesizer: the resolution of its envelopes. The JDK's default is
     * 300, nearly 7 ms; 60 give sharper ends and less delay and cost no more: a bank of one impulse
     * was rendered over 1000 times as fast as it sounds with 60, 250 times with 300.
     */
    static final int BLOCK = 60;

    /**
     * Frames by which the synthesizer answers late: one block, and two frames of its interpolation.
     * Measured with a bank of one impulse; a test holds it.
     */
    static final int DELAY = BLOCK + 2;

    /** How many frames ahead of reading notes are sent. */
    public static final int AHEAD = DELAY + BLOCK;

    private static final int MOST_VOICES = 128;

    private static final int ALL_SOUND_OFF = 120;
    private static final int BANK_SELECT = 0;
    private static final int VOLUME = 7;
    private static final int PAN = 10;

    /** General MIDI Level 2 (RP-024): this bank makes a rhythm channel of any channel. */
    private static final int RHYTHM_BANK = 120;

    private static final int MELODY_BANK = 121;
    private static final int RHYTHM = -2;

    /** The click has a channel of its own, so that it is mixed apart from the drums. */
    private static final int CLICK_CHANNEL = 16;

    /**
     * The JDK's synthesizer looks for settings in the user's preferences, and where there are none
     * yet the JDK tells the world that it makes a folder for them. Held, for a logger that nobody
     * holds forgets its level; its warnings are still told.
     */
    private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

    static {
        PREFERENCES.setLevel(Level.WARNING);
    }

    private static final int AT_ONCE = -1;
    private static final int BYTES_PER_FRAME = CHANNELS * Float.BYTES;

    private final AudioSynthesizer synthesizer;
    private final AudioInputStream stream;
    private final Receiver receiver;
    private final int[] programs = new int[16];
    private byte[] bytes = new byte[0];
    private long position;
    private boolean started;

    private NoteStream(AudioSynthesizer synthesizer, AudioInputStream stream)
            throws MidiUnavailableException {
        this.synthesizer = synthesizer;
        this.stream = stream;
        this.receiver = synthesizer.getReceiver();
        Arrays.fill(programs, -1);
    }

    /**
     * Opens a stream that sounds with a bank.
     *
     * @throws IOException if the synthesizer or its bank is not to be had, in one line
     */
    public static NoteStream open(Bank bank) throws IOException {
        AudioSynthesizer synthesizer = new SoftSynthesizer();
        AudioFormat format =
                new AudioFormat(
                        AudioFormat.Encoding.PCM_FLOAT,
                        RATE,
                        Float.SIZE,
                        CHANNELS,
                        BYTES_PER_FRAME,
                        RATE,
                        false);
        Map<String, Object> settings =
                Map.of(
                        "control rate",
                        (float) RATE / BLOCK,
                        // Its limiter would duck quiet strokes after loud ones, and adds delay.
                        "auto gain control",
                        false,
                        "max polyphony",
                        MOST_VOICES,
                        "load default soundbank",
                        false);
        try {
            AudioInputStream stream = synthesizer.openStream(format, settings);
            if (!synthesizer.loadAllInstruments(bank.soundbank())) {
                synthesizer.close();
                throw new IOException(
                        "sound bank %s: its instruments cannot be loaded".formatted(bank.name()));
            }
            return new NoteStream(synthesizer, stream);
        } catch (MidiUnavailableException e) {
            throw new IOException("the JDK's synthesizer cannot be opened", e);
        } catch (IllegalArgumentException e) {
            synthesizer.close();
            throw new IOException(
                    "sound bank %s: the JDK's synthesizer cannot play it".formatted(bank.name()),
                    e);
        }
    }

    /** Frames read so far: the next one to be read. */
    public long position() {
        return position;
    }

    /** The first frame that a note can still be sent for. */
    public long earliest() {
        return started ? position + AHEAD : 0;
    }

    /**
     * Begins a note.
     *
     * @param frame from where it sounds, at or after {@link #earliest()}
     * @param channel 1 to 16
     * @param program 0 to 127; below 0: percussion
     * @param key 0 to 127
     * @param velocity 1 to 127
     */
    public void on(long frame, int channel, int program, int key, int velocity) {
        if (program >= 0 && programs[channel - 1] != program) {
            if (programs[channel - 1] == RHYTHM) {
                send(frame - 1, ShortMessage.CONTROL_CHANGE, channel, BANK_SELECT, MELODY_BANK);
            }
            programs[channel - 1] = program;
            send(frame - 1, ShortMessage.PROGRAM_CHANGE, channel, program, 0);
        } else if (program < 0
                && channel != Sound.PERCUSSION_CHANNEL
                && programs[channel - 1] != RHYTHM) {
            programs[channel - 1] = RHYTHM;
            send(frame - 1, ShortMessage.CONTROL_CHANGE, channel, BANK_SELECT, RHYTHM_BANK);
            send(frame - 1, ShortMessage.PROGRAM_CHANGE, channel, 0, 0);
        }
        send(frame, ShortMessage.NOTE_ON, channel, key, velocity);
    }

    /**
     * Ends a note; the bank tells how it dies away. Sent for the frame before, so that it never
     * meets the next note of that key.
     */
    public void off(long frame, int channel, int key) {
        send(frame - 1, ShortMessage.NOTE_OFF, channel, key, 0);
    }

    /** Begins a note, as {@link #on(long, int, int, int, int)}; the click on its own channel. */
    public void on(long frame, Note note) {
        on(frame, channel(note), note.program().orElse(-1), note.key(), note.velocity());
    }

    /** Ends a note, as {@link #off(long, int, int)}. */
    public void off(long frame, Note note) {
        off(frame, channel(note), note.key());
    }

    private static int channel(Note note) {
        return note.part() == Part.CLICK ? CLICK_CHANNEL : note.channel();
    }

    /** Sets level and pan of a part's channel from the next block on, what sounds there too. */
    public void mix(Part part, int channel, Strip strip) {
        int where = part == Part.CLICK ? CLICK_CHANNEL : channel;
        now(where, VOLUME, strip.volumeController());
        now(where, PAN, strip.panController());
    }

    private void now(int channel, int controller, int value) {
        try {
            receiver.send(
                    new ShortMessage(ShortMessage.CONTROL_CHANGE, channel - 1, controller, value),
                    AT_ONCE);
        } catch (InvalidMidiDataException e) {
            throw new IllegalArgumentException("not a MIDI message: " + e.getMessage(), e);
        }
    }

    /** Silences everything from the next block on. */
    public void silence() {
        for (int channel = 1; channel <= 16; channel++) {
            send(earliest(), ShortMessage.CONTROL_CHANGE, channel, ALL_SOUND_OFF, 0);
        }
    }

    private void send(long frame, int command, int channel, int data1, int data2) {
        try {
            ShortMessage message = new ShortMessage(command, channel - 1, data1, data2);
            receiver.send(message, microseconds(Math.max(frame, 0)));
        } catch (InvalidMidiDataException e) {
            throw new IllegalArgumentException("not a MIDI message: " + e.getMessage(), e);
        }
    }

    /**
     * The time stamp of a frame. The synthesizer rounds to the nearest frame, and moves messages of
     * equal stamps apart by a microsecond each: so we aim at the early side of the frame, where
     * about twenty messages find room before the next begins.
     */
    private static long microseconds(long frame) {
        return Math.max(0, (long) Math.ceil((frame - 0.4) * 1e6 / RATE));
    }

    /**
     * Reads the next frames.
     *
     * @param samples left and right in turn, 1.0 is full scale but may be exceeded; at least {@code
     *     2 * frames} long
     */
    public void read(float[] samples, int frames) {
        if (!started) {
            started = true;
            fill(DELAY);
        }
        fill(frames)
                .order(ByteOrder.LITTLE_ENDIAN)
                .asFloatBuffer()
                .get(samples, 0, frames * CHANNELS);
        position += frames;
    }

    private ByteBuffer fill(int frames) {
        int length = frames * BYTES_PER_FRAME;
        if (bytes.length < length) {
            bytes = new byte[length];
        }
        try {
            if (stream.readNBytes(bytes, 0, length) < length) {
                throw new IllegalStateException("the synthesizer's stream has ended");
            }
        } catch (IOException e) {
            throw new IllegalStateException("a stream in memory is always readable", e);
        }
        return ByteBuffer.wrap(bytes, 0, length);
    }

    @Override
    public void close() {
        synthesizer.close();
    }
}
