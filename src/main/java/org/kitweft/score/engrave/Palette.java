package org.kitweft.score.engrave;

import java.awt.Color;
import java.util.Objects;

/**
 * The colours of a page.
 *
 * @param paper behind everything
 * @param ink notes, stems, beams, words
 * @param lines staff lines
 * @param letters sticking letters
 * @param asides counting syllables, bar numbers, quiet words
 * @param highlight what is pointed at
 */
public record Palette(
        Color paper, Color ink, Color lines, Color letters, Color asides, Color highlight) {
    /** Black on white paper. */
    public static final Palette PRINT =
            new Palette(
                    Color.WHITE,
                    Color.BLACK,
                    Color.BLACK,
                    Color.BLACK,
                    new Color(0x55, 0x55, 0x55),
                    new Color(0xD5, 0x5E, 0x00));

    /** For a light window. */
    public static final Palette LIGHT =
            new Palette(
                    Color.WHITE,
                    new Color(0x1A, 0x1A, 0x1A),
                    new Color(0x8A, 0x8A, 0x8A),
                    new Color(0x1A, 0x1A, 0x1A),
                    new Color(0x66, 0x66, 0x66),
                    new Color(0xD5, 0x5E, 0x00));

    /** For a dark window. */
    public static final Palette DARK =
            new Palette(
                    new Color(0x1E, 0x1F, 0x22),
                    new Color(0xE6, 0xE6, 0xE6),
                    new Color(0x80, 0x80, 0x80),
                    new Color(0xE6, 0xE6, 0xE6),
                    new Color(0xA8, 0xA8, 0xA8),
                    new Color(0xE6, 0x9F, 0x00));

    public Palette {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(lines, "lines");
        Objects.requireNonNull(letters, "letters");
        Objects.requireNonNull(asides, "asides");
        Objects.requireNonNull(highlight, "highlight");
    }

    /** The colour of a kind of sign. */
    public Color of(Kind kind) {
        return switch (kind) {
            case STAFF_LINE -> lines;
            case STICKING -> letters;
            case COUNT, KEY_NAME, BAR_NUMBER, ASIDE -> asides;
            default -> ink;
        };
    }
}
