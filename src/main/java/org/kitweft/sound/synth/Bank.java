package org.kitweft.sound.synth;

import com.sun.media.sound.SoftSynthesizer;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Soundbank;

/**
 * A sound bank, ready to be loaded into a {@link NoteStream}.
 *
 * @param name for people
 * @param soundbank its instruments
 */
public record Bank(String name, Soundbank soundbank) {

    /** Where a bank comes from, so that it can be made on a thread of its own. */
    @FunctionalInterface
    public interface Source {
        /**
         * Loads the bank; may take a while.
         *
         * @throws IOException if it cannot be had, in one line for people
         */
        Bank load() throws IOException;
    }

    public Bank {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(soundbank, "soundbank");
    }

    /**
     * Reads an SF2 or DLS file.
     *
     * @throws IOException if it cannot be read or is no sound bank, in one line that names it
     */
    public static Bank read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException("sound bank %s: there is no such file".formatted(file));
        }
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            return read(String.valueOf(file.getFileName()), file.toString(), in);
        }
    }

    /**
     * Reads the bytes of an SF2 or DLS file.
     *
     * @throws IOException if they are no sound bank, in one line that names it
     */
    public static Bank of(String name, byte[] bytes) throws IOException {
        return read(name, name, new ByteArrayInputStream(bytes));
    }

    private static Bank read(String name, String place, InputStream in) throws IOException {
        Soundbank soundbank;
        try {
            soundbank = MidiSystem.getSoundbank(in);
        } catch (InvalidMidiDataException | IOException | RuntimeException e) {
            // The JDK's readers answer to a corrupt file with index and null faults as well.
            throw new IOException(
                    "sound bank %s: expected a whole SF2 or DLS file, this one cannot be read"
                            .formatted(place),
                    e);
        }
        if (soundbank == null || soundbank.getInstruments().length == 0) {
            throw new IOException("sound bank %s: it has no instruments".formatted(place));
        }
        return new Bank(name, soundbank);
    }

    /** The bank that the JDK finds or makes; takes about half a second. */
    public static Bank ofTheJdk() throws IOException {
        Soundbank soundbank = new SoftSynthesizer().getDefaultSoundbank();
        if (soundbank == null) {
            throw new IOException("the JDK has no sound bank of its own here; choose an SF2 file");
        }
        return new Bank(soundbank.getName(), soundbank);
    }
}
