package org.kitweft.cli;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Where a command answers: results go to {@code out}, messages to {@code err}.
 *
 * @param out for results
 * @param err for messages
 * @param charset how both are written; what it cannot show is drawn with plainer signs
 * @param watched whether {@code err} is a terminal that a person may look at
 */
public record Terminal(PrintStream out, PrintStream err, Charset charset, boolean watched) {
    private static final List<String> TERMINALS =
            List.of("/dev/pts/", "/dev/tty", "/dev/console", "/dev/pty");

    /** Streams that nobody looks at. */
    public Terminal(PrintStream out, PrintStream err, Charset charset) {
        this(out, err, charset, false);
    }

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
                charset,
                errIsTerminal(console != null));
    }

    /**
     * Java knows only whether input and output both are a terminal; Linux tells it of messages too,
     * as when results go into a file.
     */
    private static boolean errIsTerminal(boolean console) {
        Path err = Path.of("/proc/self/fd/2");
        try {
            String target = Files.isSymbolicLink(err) ? err.toRealPath().toString() : "";
            return target.isEmpty() ? console : TERMINALS.stream().anyMatch(target::startsWith);
        } catch (IOException pipe) {
            // A pipe has no path.
            return false;
        }
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
