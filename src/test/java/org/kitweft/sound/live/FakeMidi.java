package org.kitweft.sound.live;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.kitweft.sound.MidiOutput;

/** One MIDI output that keeps what it is sent. */
final class FakeMidi implements MidiSinks {
    static final MidiOutput OUTPUT = new MidiOutput("fake", "Fake output");

    record Message(int status, int data1, int data2) {}

    final List<Message> sent = new CopyOnWriteArrayList<>();
    final CountDownLatch closed = new CountDownLatch(1);

    @Override
    public List<MidiOutput> list() {
        return List.of(OUTPUT);
    }

    @Override
    public MidiSink open(MidiOutput output) throws IOException {
        if (!output.equals(OUTPUT)) {
            throw new IOException("MIDI output %s is gone".formatted(output.name()));
        }
        return new MidiSink() {
            @Override
            public void send(int status, int data1, int data2) {
                sent.add(new Message(status, data1, data2));
            }

            @Override
            public void close() {
                closed.countDown();
            }
        };
    }

    List<Integer> keysStruck() {
        return sent.stream()
                .filter(message -> (message.status & 0xF0) == 0x90)
                .map(Message::data1)
                .toList();
    }
}
