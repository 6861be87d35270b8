package org.kitweft.sound.bank;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Soundbank;
import org.kitweft.sound.bank.soundfont.Sample;
import org.kitweft.sound.bank.soundfont.SoundFont;
import org.kitweft.sound.bank.soundfont.SoundFontWriter;

/** The built-in bank, computed once for all tests of a JVM. */
public final class TestBank {
    private static final SoundFont VALUES = BuiltInBank.compute(BankProgress.NONE);
    private static final byte[] BYTES = Seal.close(SoundFontWriter.bytes(VALUES));
    private static final Soundbank LOADED = load(BYTES);
    private static final Map<String, Sample> SAMPLES =
            VALUES.samples().stream().collect(Collectors.toMap(Sample::name, Function.identity()));

    private TestBank() {}

    static SoundFont values() {
        return VALUES;
    }

    /** A copy of the file's bytes. */
    public static byte[] bytes() {
        return BYTES.clone();
    }

    /** As the JDK reads it. */
    public static Soundbank loaded() {
        return LOADED;
    }

    static Sample sample(String name) {
        Sample sample = SAMPLES.get(name);
        if (sample == null) {
            throw new IllegalArgumentException("no sample " + name + " in " + SAMPLES.keySet());
        }
        return sample;
    }

    private static Soundbank load(byte[] bytes) {
        try {
            return MidiSystem.getSoundbank(new ByteArrayInputStream(bytes));
        } catch (InvalidMidiDataException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
