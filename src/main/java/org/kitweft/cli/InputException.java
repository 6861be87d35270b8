package org.kitweft.cli;

/** Input that a command cannot work with; the message is one line for people. */
final class InputException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    InputException(String message) {
        super(message);
    }

    InputException(String message, Throwable cause) {
        super(message, cause);
    }
}
