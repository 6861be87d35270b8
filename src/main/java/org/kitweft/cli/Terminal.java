package org.kitweft.cli;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Where a command answers: results go to {@code out}, messages to {@code err}.
 *
 * @param out for results
 * @param err for messages
 * @param charset how both are written; what it cannot show is drawn with plainer signs
 */
public record Terminal(PrintStream out, PrintStream err, Charset charset) {

    /**
     * The process's own streams. To a person's console in the console's character set; into a file
     * or another program in UTF-8, whatever the system's language, so that scripts can rely on it.
     */
    // From Java 22 on there is a console without a person too; then the system's set is used.
    @SuppressWarnings("SystemConsoleNull")
    public static Terminal system() {
        Console console = System.console();
        Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
        return new Terminal(
                new PrintStream(
                        new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)),
                        false,
                        charset),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset),
                charset);
    }

    /** What can be shown. */
    Symbols symbols() {
        return Symbols.in(charset);
    }

    /** For results, as a writer; flushes at line ends. */
    PrintWriter outWriter() {
        return new PrintWriter(out, true, charset);
    }

    /** For messages, as a writer; flushes at line ends. */
    PrintWriter errWriter() {
        return new PrintWriter(err, true, charset);
    }
}
