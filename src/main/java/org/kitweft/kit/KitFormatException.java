package org.kitweft.kit;

/** A kit file with a fault: one line that names the file, the place and what is wrong there. */
public final class KitFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    KitFormatException(String source, String place, String fault) {
        super("kit file %s: %s%s".formatted(source, place.isEmpty() ? "" : place + ": ", fault));
    }

    KitFormatException(String source, String place, Throwable cause) {
        this(source, place, String.valueOf(cause.getMessage()));
        initCause(cause);
    }
}
