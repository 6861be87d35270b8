package org.kitweft.sound;

import java.util.List;

/**
 * Notes of one kind, as a MIDI file keeps them together: the drums, the click, an instrument of the
 * band.
 *
 * @param name for people: {@code drums}
 * @param notes sorted by {@link Note#IN_TIME} when made
 */
public record Track(String name, List<Note> notes) {
    /** The name of the track with the hits. */
    public static final String DRUMS = "drums";

    /** The name of the track with the metronome. */
    public static final String CLICK = "click";

    public Track {
        if (name.isBlank()) {
            throw new IllegalArgumentException("the track's name is empty");
        }
        notes = notes.stream().sorted(Note.IN_TIME).toList();
    }
}
