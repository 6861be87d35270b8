package org.kitweft.score.page;

import java.util.concurrent.CancellationException;

/**
 * Hears how far long work has come, and can stop it. Called on the working thread.
 *
 * <p>Stopping loses nothing: files are only moved into place when they are whole.
 */
@FunctionalInterface
public interface Progress {
    /** Hears nothing and stops nothing. */
    Progress NONE = (done, of) -> true;

    /**
     * So much is done.
     *
     * @param done parts done
     * @param of parts in all
     * @return whether to go on
     */
    boolean report(int done, int of);

    /**
     * Reports and stops the caller if it shall stop.
     *
     * @throws CancellationException if it shall
     */
    default void check(int done, int of) {
        if (!report(done, of)) {
            throw new CancellationException("stopped after %d of %d".formatted(done, of));
        }
    }
}
