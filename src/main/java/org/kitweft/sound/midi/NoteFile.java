package org.kitweft.sound.midi;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.kitweft.explore.search.NoteOn;

/**
 * The notes of a standard MIDI file, of whatever program: when they begin, on which channel and
 * key, how hard. All tracks together; tempo, meter and how long notes last are left out.
 *
 * @param notes in time
 * @param ticksPerQuarter the file's division, 1 or more
 */
public record NoteFile(List<NoteOn> notes, int ticksPerQuarter) {
    /** Larger than any groove's file by far; a file of another kind is not read to its end. */
    static final long MOST_BYTES = 8L << 20;

    public NoteFile {
        notes = List.copyOf(notes);
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
        Sequence sequence;
        try {
            sequence = MidiSystem.getSequence(path.toFile());
        } catch (InvalidMidiDataException e) {
            throw new IOException("%s is no MIDI file".formatted(path.getFileName()), e);
        }
        if (sequence.getDivisionType() != Sequence.PPQ) {
            throw new IllegalArgumentException(
                    "%s counts time in film frames: expected ticks per quarter"
                            .formatted(path.getFileName()));
        }
        List<NoteOn> notes = new ArrayList<>();
        for (Track track : sequence.getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                add(track.get(i), notes);
            }
        }
        notes.sort(Comparator.comparingLong(NoteOn::tick));
        return new NoteFile(notes, sequence.getResolution());
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
