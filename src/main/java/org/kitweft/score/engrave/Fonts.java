package org.kitweft.score.engrave;

import java.util.Objects;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.font.TextFont;

/**
 * The fonts of a page. Load them once and pass them on: loading takes a noticeable moment.
 *
 * @param music the music font
 * @param text the text font
 */
public record Fonts(MusicFont music, TextFont text) {
    public Fonts {
        Objects.requireNonNull(music, "music");
        Objects.requireNonNull(text, "text");
    }

    /** Both from the jar. */
    public static Fonts load() {
        return new Fonts(MusicFont.load(), TextFont.load());
    }
}
