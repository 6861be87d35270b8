package org.kitweft.ui.task;

import java.util.function.Consumer;

/** Work off the event thread, its outcome on it. Tests pass {@link #DIRECT}. */
public interface Tasks {

    /** What is to be done; runs off the event thread. */
    @FunctionalInterface
    interface Work<T> {
        /**
         * Does it.
         *
         * @param progress to tell how far it is, and to hear whether it is still wanted
         */
        T run(Progress progress) throws Exception;
    }

    /** Between work and those who wait for it; all methods may be called on any thread. */
    interface Progress {
        /** Tells how far the work is, from 0 to 1. */
        void at(double part);

        /** Whether nobody waits for the work any more; it should return soon then. */
        boolean stopped();

        /** Someone who looks on and never stops it. */
        Progress NONE =
                new Progress() {
                    @Override
                    public void at(double part) {
                        // nobody looks
                    }

                    @Override
                    public boolean stopped() {
                        return false;
                    }
                };
    }

    /** Work under way. */
    interface Running {
        /** Stops it: neither {@code done} nor {@code failed} is called after this. */
        void stop();
    }

    /**
     * Starts work.
     *
     * @param name for people, e.g. {@code Writing groove.wav}; empty for work too short to show
     * @param done gets the outcome, on the event thread
     * @param failed gets what was thrown, on the event thread
     */
    <T> Running run(String name, Work<T> work, Consumer<T> done, Consumer<Exception> failed);

    /** Does everything at once on the thread that asks. */
    Tasks DIRECT =
            new Tasks() {
                @Override
                public <T> Running run(
                        String name, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
                    T outcome;
                    try {
                        outcome = work.run(Progress.NONE);
                    } catch (Exception e) {
                        failed.accept(e);
                        return () -> {};
                    }
                    done.accept(outcome);
                    return () -> {};
                }
            };
}
