package org.kitweft.score.font;

import java.awt.Font;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A font of this computer, for characters that the text font has no sign for.
 *
 * @param font as Java reads it, in size 1
 * @param file where it lies
 */
public record SystemFont(Font font, Path file) {
    public SystemFont {
        Objects.requireNonNull(font, "font");
        Objects.requireNonNull(file, "file");
    }

    /** The name that the font itself states; its own within a collection of fonts. */
    public String name() {
        return font.getFontName();
    }
}
