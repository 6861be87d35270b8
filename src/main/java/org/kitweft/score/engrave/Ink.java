package org.kitweft.score.engrave;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.SystemFont;
import org.kitweft.score.font.TextStyle;

/** What a sign is drawn with, relative to where it is placed. */
public sealed interface Ink {

    /**
     * A glyph of the music font.
     *
     * @param glyph which
     * @param scale times its own size, a staff space being the unit
     */
    record OfGlyph(Glyph glyph, double scale) implements Ink {
        public OfGlyph {
            Objects.requireNonNull(glyph, "glyph");
        }
    }

    /**
     * An area.
     *
     * @param path its outline; must not be changed any more
     * @param colour its own colour; empty: that of its kind
     */
    record OfShape(Path2D path, Optional<Color> colour) implements Ink {
        public OfShape {
            Objects.requireNonNull(path, "path");
            Objects.requireNonNull(colour, "colour");
        }
    }

    /**
     * A line of text, from the left end of its base line.
     *
     * @param text what it says
     * @param style its cut
     * @param size of its font
     * @param colour its own colour; empty: that of its kind
     * @param font of this computer; empty: the text font
     */
    record OfText(
            String text,
            TextStyle style,
            double size,
            Optional<Color> colour,
            Optional<SystemFont> font)
            implements Ink {
        public OfText {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(style, "style");
            Objects.requireNonNull(colour, "colour");
            Objects.requireNonNull(font, "font");
        }
    }
}
