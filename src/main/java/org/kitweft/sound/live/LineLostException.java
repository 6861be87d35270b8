package org.kitweft.sound.live;

import java.io.IOException;

/** An audio line is not to be had, or was taken away. The message is one line for people. */
public final class LineLostException extends IOException {
    private static final long serialVersionUID = 1;

    /** With a message for people. */
    public LineLostException(String message) {
        super(message);
    }

    /** With a message for people and what it came from. */
    public LineLostException(String message, Throwable cause) {
        super(message, cause);
    }
}
