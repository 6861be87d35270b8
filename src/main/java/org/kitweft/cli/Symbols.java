package org.kitweft.cli;

import java.nio.charset.Charset;

/**
 * The signs that texts are drawn with.
 *
 * @param dot an empty step
 * @param between words of one line
 * @param quarter a quarter note
 * @param dottedQuarter a dotted quarter note
 * @param eighth an eighth note
 * @param minus a range
 */
record Symbols(
        String dot,
        String between,
        String quarter,
        String dottedQuarter,
        String eighth,
        String minus) {
    /** For consoles that show everything. */
    static final Symbols UNICODE = new Symbols("·", " · ", "♩", "♩.", "♪", "–");

    /** For consoles that show little. */
    static final Symbols ASCII = new Symbols(".", ", ", "quarter", "dotted quarter", "eighth", "-");

    /** The best that a character set can show. */
    static Symbols in(Charset charset) {
        String all = UNICODE.dot + UNICODE.quarter + UNICODE.eighth + UNICODE.minus;
        return charset.canEncode() && charset.newEncoder().canEncode(all) ? UNICODE : ASCII;
    }
}
