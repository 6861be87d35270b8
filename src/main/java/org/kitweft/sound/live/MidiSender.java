package org.kitweft.sound.live;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.kitweft.sound.Note;
import org.kitweft.sound.synth.NoteStream;

/**
 * Sends notes to an external MIDI device when their frame is heard from the line. The time until
 * then is counted in frames; no clock is read.
 */
final class MidiSender implements NoteSink, AutoCloseable {
    private static final int NOTE_ON = 0x90;
    private static final int NOTE_OFF = 0x80;
    private static final int PROGRAM_CHANGE = 0xC0;
    private static final int CONTROL_CHANGE = 0xB0;
    private static final int ALL_NOTES_OFF = 123;

    private final MidiSink sink;
    private final ScheduledExecutorService timer;
    private final LongSupplier heard;
    private final Set<Future<?>> waiting = ConcurrentHashMap.newKeySet();
    private final Map<Integer, Integer> programs = new HashMap<>();

    /**
     * @param timer with a single thread, so that messages keep their order
     * @param heard the frame that is heard now
     */
    MidiSender(MidiSink sink, ScheduledExecutorService timer, LongSupplier heard) {
        this.sink = sink;
        this.timer = timer;
        this.heard = heard;
    }

    @Override
    public void on(long frame, Note note) {
        int channel = note.channel() - 1;
        if (note.program().isPresent()) {
            int program = note.program().getAsInt();
            Integer before = programs.put(channel, program);
            if (before == null || before != program) {
                at(frame, PROGRAM_CHANGE | channel, program, 0);
            }
        }
        at(frame, NOTE_ON | channel, note.key(), note.velocity());
    }

    @Override
    public void off(long frame, Note note) {
        at(frame, NOTE_OFF | (note.channel() - 1), note.key(), 0);
    }

    private void at(long frame, int status, int data1, int data2) {
        long frames = Math.max(0, frame - heard.getAsLong());
        long nanoseconds = frames * TimeUnit.SECONDS.toNanos(1) / NoteStream.RATE;
        waiting.removeIf(Future::isDone);
        waiting.add(
                timer.schedule(
                        () -> sink.send(status, data1, data2), nanoseconds, TimeUnit.NANOSECONDS));
    }

    /** Takes back what was not sent yet and ends all notes. */
    void silence() {
        waiting.forEach(message -> message.cancel(false));
        waiting.clear();
        timer.execute(
                () -> {
                    for (int channel = 0; channel < 16; channel++) {
                        sink.send(CONTROL_CHANGE | channel, ALL_NOTES_OFF, 0);
                    }
                });
    }

    /** Silences, then gives the device back. */
    @Override
    public void close() {
        silence();
        timer.execute(sink::close);
    }
}
