package org.kitweft.sound.live;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequencer;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Synthesizer;
import org.kitweft.sound.MidiOutput;

/** The MIDI devices of the JDK's sound system, its own software synthesizers left out. */
final class SystemMidi implements MidiSinks {

    @Override
    public List<MidiOutput> list() {
        List<MidiOutput> outputs = new ArrayList<>();
        for (MidiDevice.Info info : MidiSystem.getMidiDeviceInfo()) {
            if (takesNotes(info)) {
                outputs.add(new MidiOutput(id(info), info.getName()));
            }
        }
        return outputs;
    }

    private static boolean takesNotes(MidiDevice.Info info) {
        try {
            MidiDevice device = MidiSystem.getMidiDevice(info);
            return device.getMaxReceivers() != 0
                    && !(device instanceof Synthesizer)
                    && !(device instanceof Sequencer);
        } catch (MidiUnavailableException e) {
            return false; // unplugged since it was listed
        }
    }

    private static String id(MidiDevice.Info info) {
        return info.getName() + "|" + info.getDescription();
    }

    @Override
    public MidiSink open(MidiOutput output) throws IOException {
        for (MidiDevice.Info info : MidiSystem.getMidiDeviceInfo()) {
            if (id(info).equals(output.id())) {
                try {
                    MidiDevice device = MidiSystem.getMidiDevice(info);
                    device.open();
                    return new Device(device, device.getReceiver());
                } catch (MidiUnavailableException e) {
                    throw new IOException(
                            "MIDI output %s is in use or cannot be opened".formatted(output.name()),
                            e);
                }
            }
        }
        throw new IOException("MIDI output %s is gone".formatted(output.name()));
    }

    private record Device(MidiDevice device, Receiver receiver) implements MidiSink {
        @Override
        public void send(int status, int data1, int data2) {
            try {
                receiver.send(new ShortMessage(status, data1, data2), -1);
            } catch (InvalidMidiDataException e) {
                throw new IllegalArgumentException("not a MIDI message: " + e.getMessage(), e);
            }
        }

        @Override
        public void close() {
            device.close();
        }
    }
}
