package org.kitweft.score.musicxml;

import java.util.Objects;

/**
 * What a file says beside its score.
 *
 * @param title of the work; may be empty
 */
public record MusicXmlSettings(String title) {
    /** No title. */
    public static final MusicXmlSettings NONE = new MusicXmlSettings("");

    public MusicXmlSettings {
        Objects.requireNonNull(title, "title");
    }
}
