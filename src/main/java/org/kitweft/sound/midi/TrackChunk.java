package org.kitweft.sound.midi;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kitweft.groove.Meter;
import org.kitweft.sound.Note;
import org.kitweft.sound.Strip;

/** Collects the events of one track, in any order of time. */
final class TrackChunk {
    private static final int META = 0xFF;
    private static final int TRACK_NAME = 0x03;
    private static final int MARKER = 0x06;
    private static final int END_OF_TRACK = 0x2F;
    private static final int TEMPO = 0x51;
    private static final int TIME_SIGNATURE = 0x58;
    private static final int NOTE_OFF = 0x80;
    private static final int NOTE_ON = 0x90;
    private static final int CONTROL_CHANGE = 0xB0;
    private static final int PROGRAM_CHANGE = 0xC0;
    private static final int VOLUME = 7;
    private static final int PAN = 10;

    /** The format's MIDI clocks in a quarter note, and thirty-seconds in a quarter. */
    private static final int CLOCKS_PER_QUARTER = 24;

    private static final int THIRTY_SECONDS = 8;

    /** At one tick: what is said about the track, then ends of notes, then notes. */
    private enum Turn {
        META,
        OFF,
        ON
    }

    /** A class, as a record's equality would not look into the bytes. */
    private static final class Event {
        private final long tick;
        private final Turn turn;
        private final byte[] bytes;

        Event(long tick, Turn turn, byte[] bytes) {
            this.tick = tick;
            this.turn = turn;
            this.bytes = bytes;
        }

        long tick() {
            return tick;
        }

        Turn turn() {
            return turn;
        }
    }

    private final List<Event> events = new ArrayList<>();
    private final Map<Integer, Integer> programs = new HashMap<>();

    void name(String name) {
        meta(0, TRACK_NAME, name.getBytes(StandardCharsets.UTF_8));
    }

    void marker(long tick, String text) {
        meta(tick, MARKER, text.getBytes(StandardCharsets.UTF_8));
    }

    /** A meter; the metronome of the format clicks on its beats. */
    void meter(long tick, Meter meter) {
        int clocks = CLOCKS_PER_QUARTER * 4 / meter.unit() * (meter.isCompound() ? 3 : 1);
        int powerOfTwo = Integer.numberOfTrailingZeros(meter.unit());
        meta(tick, TIME_SIGNATURE, bytes(meter.count(), powerOfTwo, clocks, THIRTY_SECONDS));
    }

    void tempo(long tick, int microsecondsPerQuarter) {
        meta(
                tick,
                TEMPO,
                bytes(
                        microsecondsPerQuarter >> 16 & 0xFF,
                        microsecondsPerQuarter >> 8 & 0xFF,
                        microsecondsPerQuarter & 0xFF));
    }

    /** Level and pan of a channel from the start on. */
    void mix(int channel, Strip strip) {
        controller(channel, VOLUME, strip.volumeController());
        controller(channel, PAN, strip.panController());
    }

    private void controller(int channel, int controller, int value) {
        events.add(
                new Event(0, Turn.META, bytes(CONTROL_CHANGE | (channel - 1), controller, value)));
    }

    /** A note, and before it its program where the channel has another; call in time. */
    void note(Note note, long on, long off) {
        int channel = note.channel() - 1;
        note.program().ifPresent(program -> program(channel, program, on));
        events.add(new Event(on, Turn.ON, bytes(NOTE_ON | channel, note.key(), note.velocity())));
        events.add(new Event(off, Turn.OFF, bytes(NOTE_OFF | channel, note.key(), 0)));
    }

    private void program(int channel, int program, long tick) {
        Integer before = programs.put(channel, program);
        if (before == null || before != program) {
            events.add(
                    new Event(
                            before == null ? 0 : tick,
                            before == null ? Turn.META : Turn.ON,
                            bytes(PROGRAM_CHANGE | channel, program)));
        }
    }

    /** The chunk, which lasts to a tick or to its last event. */
    byte[] end(long tick) {
        events.sort(Comparator.comparingLong(Event::tick).thenComparing(Event::turn));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        long at = 0;
        for (Event event : events) {
            Chunks.quantity(out, event.tick - at);
            out.writeBytes(event.bytes);
            at = event.tick;
        }
        Chunks.quantity(out, Math.max(0, tick - at));
        out.writeBytes(bytes(META, END_OF_TRACK, 0));
        return Chunks.chunk("MTrk", out.toByteArray());
    }

    private void meta(long tick, int type, byte[] content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(META);
        out.write(type);
        Chunks.quantity(out, content.length);
        out.writeBytes(content);
        events.add(new Event(tick, Turn.META, out.toByteArray()));
    }

    private static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }
}
