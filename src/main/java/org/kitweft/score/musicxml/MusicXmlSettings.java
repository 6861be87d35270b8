package org.kitweft.score.musicxml;

import java.util.Objects;
import java.util.Optional;
import org.kitweft.groove.Tempo;

/**
 * What a file says beside its notes.
 *
 * @param title of the work; may be empty
 * @param tempo the tempo it opens with, if any
 */
public record MusicXmlSettings(String title, Optional<Tempo> tempo) {
    /** No title, no tempo. */
    public static final MusicXmlSettings NONE = new MusicXmlSettings("", Optional.empty());

    public MusicXmlSettings {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(tempo, "tempo");
    }
}
