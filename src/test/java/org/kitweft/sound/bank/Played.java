package org.kitweft.sound.bank;

import com.sun.media.sound.AudioSynthesizer;
import com.sun.media.sound.SoftSynthesizer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Soundbank;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import org.kitweft.sound.bank.render.Wave;

/**
 * A few notes through the JDK's synthesizer as a stream, dry (no reverb, no chorus) and without its
 * automatic gain control, so that what comes out is what the bank holds.
 */
final class Played {
    private static final int RATE = 44_100;
    private static final int DRUMS = 9;

    private final List<Timed> events = new ArrayList<>();

    private record Timed(double seconds, ShortMessage message) {}

    /** Strikes a key of the percussion channel; it is let go after 50 ms, as short notes are. */
    Played strike(double at, int key, int velocity) {
        return note(at, 0.05, DRUMS, key, velocity);
    }

    Played note(double at, double lasting, int channel, int key, int velocity) {
        event(at, ShortMessage.NOTE_ON, channel, key, velocity);
        event(at + lasting, ShortMessage.NOTE_OFF, channel, key, 0);
        return this;
    }

    Played program(int channel, int program) {
        event(0, ShortMessage.PROGRAM_CHANGE, channel, program, 0);
        return this;
    }

    Played control(double at, int channel, int controller, int value) {
        event(at, ShortMessage.CONTROL_CHANGE, channel, controller, value);
        return this;
    }

    private void event(double at, int command, int channel, int data1, int data2) {
        try {
            events.add(new Timed(at, new ShortMessage(command, channel, data1, data2)));
        } catch (InvalidMidiDataException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** Left and right added up and halved. */
    Wave mono(Soundbank bank, double seconds) {
        double[][] both = render(bank, seconds);
        double[] mono = new double[both[0].length];
        for (int i = 0; i < mono.length; i++) {
            mono[i] = (both[0][i] + both[1][i]) / 2;
        }
        return new Wave(RATE, mono);
    }

    /** Left and right, full scale 1. */
    double[][] render(Soundbank bank, double seconds) {
        AudioSynthesizer synthesizer = new SoftSynthesizer();
        AudioFormat format =
                new AudioFormat(AudioFormat.Encoding.PCM_FLOAT, RATE, 32, 2, 8, RATE, false);
        Map<String, Object> settings =
                Map.of(
                        "load default soundbank", false,
                        "auto gain control", false,
                        "reverb", false,
                        "chorus", false,
                        "max polyphony", 128);
        try (AudioInputStream stream = synthesizer.openStream(format, settings)) {
            synthesizer.loadAllInstruments(bank);
            Receiver receiver = synthesizer.getReceiver();
            for (Timed event : events) {
                receiver.send(event.message(), Math.round(event.seconds() * 1e6));
            }
            byte[] bytes = stream.readNBytes(8 * (int) (seconds * RATE));
            return channels(bytes);
        } catch (MidiUnavailableException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            synthesizer.close();
        }
    }

    private static double[][] channels(byte[] bytes) {
        var floats =
                java.nio.ByteBuffer.wrap(bytes)
                        .order(java.nio.ByteOrder.LITTLE_ENDIAN)
                        .asFloatBuffer();
        double[][] both = new double[2][bytes.length / 8];
        for (int i = 0; i < both[0].length; i++) {
            both[0][i] = floats.get();
            both[1][i] = floats.get();
        }
        return both;
    }
}
