package org.kitweft.ui.session;

/** For tests in which nothing may go wrong: notes are read by nobody, a fault fails the test. */
public final class FaultsFail implements Notices {
    /** Reads nothing yet. */
    public FaultsFail() {}

    @Override
    public void note(String line) {
        // nobody reads it
    }

    @Override
    public void fault(String line) {
        throw new AssertionError(line);
    }
}
