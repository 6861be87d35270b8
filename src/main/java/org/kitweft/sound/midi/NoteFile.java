package org.kitweft.sound.midi;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.kitweft.explore.search.NoteOn;
import org.kitweft.sound.Part;

/**
 * The notes of a standard MIDI file, of whatever program: when they begin, on which channel and
 * key, how hard. Tempo, meter and how long notes last are left out.
 *
 * <p>A track with the name of our own drums is read alone; where there is none, all tracks are read
 * together but one with the name of our click.
 *
 * @param notes in time
 * @param ticksPerQuarter the file's division, 1 or more
 * @param unread the names of the tracks whose notes were not read, in the order of the file
 */
public record NoteFile(List<NoteOn> notes, int ticksPerQuarter, List<String> unread) {
    /** Larger than any groove's file by far; a file of another kind is not read to its end. */
    static final long MOST_BYTES = 8L << 20;

    /** The meta event of a track's name, from the standard MIDI file specification. */
    private static final int TRACK_NAME = 0x03;

    public NoteFile {
        notes = List.copyOf(notes);
        unread = List.copyOf(unread);
    }

    /** The notes of one track; the name is empty where the file gives none. */
    private record Voice(String name, List<NoteOn> notes) {
        boolean is(Part part) {
            return name.equals(part.id());
        }
    }

    /**
     * Reads a file.
     *
     * @throws IOException if it cannot be read, or is no MIDI file; the message names the fault
     * @throws IllegalArgumentException if its time is not counted in quarters
     */
    public static NoteFile read(Path path) throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new NoSuchFileException(path.toString());
        }
        if (Files.size(path) > MOST_BYTES) {
            throw new IOException(
                    "%s is too large for a MIDI file: expected at most %d MB"
                            .formatted(path.getFileName(), MOST_BYTES >> 20));
        }
        Sequence sequence = sequence(path);
        if (sequence.getDivisionType() != Sequence.PPQ) {
            throw new IllegalArgumentException(
                    "%s counts time in film frames: expected ticks per quarter"
                            .formatted(path.getFileName()));
        }
        List<Voice> voices =
                Stream.of(sequence.getTracks())
                        .map(NoteFile::voice)
                        .filter(voice -> !voice.notes().isEmpty())
                        .toList();
        boolean ours = voices.stream().anyMatch(voice -> voice.is(Part.DRUMS));
        Predicate<Voice> wanted = voice -> ours ? voice.is(Part.DRUMS) : !voice.is(Part.CLICK);
        List<NoteOn> notes =
                voices.stream()
                        .filter(wanted)
                        .flatMap(voice -> voice.notes().stream())
                        .sorted(Comparator.comparingLong(NoteOn::tick))
                        .toList();
        List<String> unread = voices.stream().filter(wanted.negate()).map(Voice::name).toList();
        return new NoteFile(notes, sequence.getResolution(), unread);
    }

    private static Sequence sequence(Path path) throws IOException {
        byte[] bytes = Files.readAllBytes(path);
        Wholeness.check(bytes, String.valueOf(path.getFileName()));
        try {
            return MidiSystem.getSequence(new ByteArrayInputStream(bytes));
        } catch (InvalidMidiDataException | IOException | RuntimeException e) {
            // What a reader throws at damaged bytes is its own affair; the bytes are in memory.
            throw new IOException(
                    "%s is damaged: it begins as a MIDI file, but does not go on as one"
                            .formatted(path.getFileName()),
                    e);
        }
    }

    private static Voice voice(Track track) {
        String name = "";
        List<NoteOn> notes = new ArrayList<>();
        for (int i = 0; i < track.size(); i++) {
            add(track.get(i), notes);
            if (track.get(i).getMessage() instanceof MetaMessage meta
                    && meta.getType() == TRACK_NAME) {
                name = new String(meta.getData(), UTF_8).strip();
            }
        }
        return new Voice(name, notes);
    }

    /** A Note On with velocity 0 is a Note Off. */
    private static void add(MidiEvent event, List<NoteOn> notes) {
        if (event.getMessage() instanceof ShortMessage message
                && message.getCommand() == ShortMessage.NOTE_ON
                && message.getData2() > 0) {
            notes.add(
                    new NoteOn(
                            event.getTick(),
                            message.getChannel() + 1,
                            message.getData1(),
                            message.getData2()));
        }
    }
}
