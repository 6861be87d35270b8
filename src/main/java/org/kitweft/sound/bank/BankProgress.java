package org.kitweft.sound.bank;

/** Watches a bank being built. Both methods have a default that does nothing and never cancels. */
public interface BankProgress {
    /** Nobody watches. */
    BankProgress NONE = new BankProgress() {};

    /**
     * {@code done} of {@code total} samples are rendered. Called on the thread that asked for the
     * bank.
     */
    default void rendered(int done, int total) {}

    /** Whether to give up; asked before each sample, also on the builder's own threads. */
    default boolean cancelled() {
        return false;
    }
}
