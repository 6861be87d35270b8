package org.kitweft.sound.live;

import org.jspecify.annotations.Nullable;

/**
 * Ends a write that hangs: some systems let a writer wait for ever when the device is taken away.
 * Asked in regular intervals; the intervals are the asker's, no clock is read.
 */
final class Watch {
    /** Intervals that a write may take. */
    static final int PATIENCE = 3;

    private @Nullable OutputLine writing;
    private int waited;

    /** A write begins. */
    synchronized void begin(OutputLine line) {
        writing = line;
        waited = 0;
    }

    /** The write has ended. */
    synchronized void end() {
        writing = null;
    }

    /** The line whose write hangs, once. */
    synchronized @Nullable OutputLine hanging() {
        OutputLine line = writing;
        if (line != null && ++waited == PATIENCE) {
            return line;
        }
        return null;
    }
}
