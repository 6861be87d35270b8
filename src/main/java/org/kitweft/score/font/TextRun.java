package org.kitweft.score.font;

import java.util.Objects;
import java.util.Optional;

/**
 * A piece of a text that one font can write.
 *
 * @param text as it is shown
 * @param font of this computer; empty: the text font
 * @param unwritable the characters that no font has, which {@code text} shows as boxes; else empty
 */
public record TextRun(String text, Optional<SystemFont> font, String unwritable) {
    public TextRun {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(font, "font");
        Objects.requireNonNull(unwritable, "unwritable");
    }
}
