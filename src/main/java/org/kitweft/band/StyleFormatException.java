package org.kitweft.band;

/** A style file with a fault: one line that names the file, the place and what is wrong there. */
public final class StyleFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    StyleFormatException(String source, String place, String fault) {
        super("style file %s: %s%s".formatted(source, place.isEmpty() ? "" : place + ": ", fault));
    }
}
