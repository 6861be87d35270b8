package org.kitweft.cli;

import java.util.Locale;
import java.util.function.LongSupplier;
import org.kitweft.explore.search.SearchWatch;

/**
 * How far a long work is, for a person who waits: one line on {@code err} that is written over
 * again and again and wiped out in the end. Says nothing in the first second, and never where
 * {@code err} is no terminal, so that a log stays clean.
 */
final class Progress implements SearchWatch, AutoCloseable {
    private static final long SILENT_FOR_NANOS = 1_000_000_000L;
    private static final long EVERY_NANOS = 200_000_000L;

    private final Terminal terminal;
    private final LongSupplier clock;
    private long next;
    private int shown;

    /** Begins now. */
    Progress(Terminal terminal) {
        this(terminal, System::nanoTime);
    }

    /**
     * Begins now.
     *
     * @param clock in nanoseconds
     */
    Progress(Terminal terminal, LongSupplier clock) {
        this.terminal = terminal;
        this.clock = clock;
        this.next = clock.getAsLong() + SILENT_FOR_NANOS;
    }

    @Override
    public void progress(int done, int all) {
        if (!terminal.watched() || clock.getAsLong() - next < 0) {
            return;
        }
        next = clock.getAsLong() + EVERY_NANOS;
        String line =
                String.format(Locale.ROOT, "looked at %,d of %,d; Ctrl+C gives up", done, all);
        terminal.err().print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
        terminal.err().flush();
        shown = line.length();
    }

    /** Never: Ctrl+C ends the process. */
    @Override
    public boolean isCancelled() {
        return false;
    }

    /** Wipes the line out, so that something else can be written; it may come again. */
    void clear() {
        if (shown > 0) {
            terminal.err().print("\r" + " ".repeat(shown) + "\r");
            terminal.err().flush();
            shown = 0;
        }
    }

    @Override
    public void close() {
        clear();
    }
}
