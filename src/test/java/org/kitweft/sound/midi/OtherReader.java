package org.kitweft.sound.midi;

import dev.atsushieno.ktmidi.Midi1CompoundMessage;
import dev.atsushieno.ktmidi.Midi1Event;
import dev.atsushieno.ktmidi.Midi1Message;
import dev.atsushieno.ktmidi.Midi1Music;
import dev.atsushieno.ktmidi.Midi1ReaderWriterKt;
import dev.atsushieno.ktmidi.Midi1Track;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A MIDI file as another library reads it, dev.atsushieno:ktmidi-jvm. Channels count from 1. */
final class OtherReader {
    record ReadNote(
            int track, int channel, int program, int key, int velocity, long on, long off) {}

    record Meta(int track, long tick, int type, String text, List<Integer> bytes) {}

    final int format;
    final int perQuarter;
    final int tracks;
    final List<ReadNote> notes = new ArrayList<>();
    final List<Meta> metas = new ArrayList<>();

    OtherReader(byte[] file) {
        List<Byte> bytes = new ArrayList<>();
        for (byte value : file) {
            bytes.add(value);
        }
        Midi1Music music = new Midi1Music();
        Midi1ReaderWriterKt.read(music, bytes);
        format = music.getFormat();
        perQuarter = music.getDeltaTimeSpec();
        tracks = music.getTracks().size();
        for (int track = 0; track < tracks; track++) {
            read(track, music.getTracks().get(track));
        }
    }

    private void read(int number, Midi1Track track) {
        List<ReadNote> held = new ArrayList<>();
        int[] programs = new int[16];
        Arrays.fill(programs, -1);
        long tick = 0;
        for (Midi1Event event : track.getEvents()) {
            tick += event.getDeltaTime();
            Midi1Message message = event.getMessage();
            int kind = message.getStatusCode() & 0xF0;
            int channel = message.getChannel() & 0x0F;
            int key = message.getMsb() & 0x7F;
            int velocity = message.getLsb() & 0x7F;
            if ((message.getStatusByte() & 0xFF) == 0xFF) {
                meta(number, tick, message);
            } else if (kind == 0xC0) {
                programs[channel] = key;
            } else if (kind == 0x90 && velocity > 0) {
                held.add(
                        new ReadNote(
                                number, channel + 1, programs[channel], key, velocity, tick, -1));
            } else if (kind == 0x80 || kind == 0x90) {
                end(held, channel + 1, key, tick);
            }
        }
        if (!held.isEmpty()) {
            throw new AssertionError("notes without end: " + held);
        }
    }

    private void end(List<ReadNote> held, int channel, int key, long tick) {
        for (int i = 0; i < held.size(); i++) {
            ReadNote note = held.get(i);
            if (note.channel == channel && note.key == key) {
                held.remove(i);
                notes.add(
                        new ReadNote(
                                note.track,
                                channel,
                                note.program,
                                key,
                                note.velocity,
                                note.on,
                                tick));
                return;
            }
        }
        throw new AssertionError("the end of a note that never began, at tick " + tick);
    }

    private void meta(int track, long tick, Midi1Message message) {
        Midi1CompoundMessage compound = (Midi1CompoundMessage) message;
        List<Integer> bytes = new ArrayList<>();
        byte[] data = compound.getExtraData();
        int from = compound.getExtraDataOffset();
        int length = data == null ? 0 : compound.getExtraDataLength();
        for (int i = 0; i < length; i++) {
            bytes.add(data[from + i] & 0xFF);
        }
        String text = data == null ? "" : new String(data, from, length, StandardCharsets.UTF_8);
        metas.add(new Meta(track, tick, message.getMetaType() & 0xFF, text, bytes));
    }

    List<Meta> metas(int type) {
        return metas.stream().filter(meta -> meta.type == type).toList();
    }
}
