package org.kitweft.sound;

import java.util.List;
import java.util.Objects;

/**
 * The notes of one part, as a MIDI file keeps them together.
 *
 * @param part who plays
 * @param strip its level and place; muted parts have no track at all
 * @param notes sorted by {@link Note#IN_TIME} when made
 */
public record Track(Part part, Strip strip, List<Note> notes) {
    public Track {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(strip, "strip");
        notes = notes.stream().sorted(Note.IN_TIME).toList();
    }

    /** Its name for people and files: {@code drums}. */
    public String name() {
        return part.id();
    }

    /** The MIDI channels it plays on, 1 to 16, ascending. */
    public List<Integer> channels() {
        return notes.stream().map(Note::channel).distinct().sorted().toList();
    }
}
