package org.kitweft.cli;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.util.Optional;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Tempo;

/**
 * What the program does with its arguments: a command if there is one, else the window; and where
 * there is no window or no display, the opening groove as text.
 */
public final class Start {

    /** Opens the window and returns; the program goes on until the window is closed. */
    @FunctionalInterface
    public interface Window {
        /**
         * Opens it.
         *
         * @throws HeadlessException if there is no display
         */
        void open();
    }

    /** The command that weaves the opening groove and writes it. */
    static final String WRITE_ITS_FILES =
            "java -jar target/kitweft.jar groove \">R(L)RR >LR(L)(L)\" --on R=hi-hat"
                    + " --double-accents R=bass-drum --midi opening.mid --wav opening.wav --png opening.png";

    private Start() {}

    /**
     * Starts the program.
     *
     * @param window what to open, if there is one
     * @return the exit code, or empty if a window stays open
     */
    public static Optional<Integer> run(
            Terminal terminal, Optional<Window> window, String... args) {
        if (args.length > 0) {
            return Optional.of(Cli.run(terminal, args));
        }
        if (window.isPresent() && !GraphicsEnvironment.isHeadless()) {
            try {
                window.get().open();
                return Optional.empty();
            } catch (HeadlessException | AWTError e) {
                terminal.err().println("kitweft: the display cannot be used: " + e.getMessage());
            }
        }
        opening(terminal);
        return Optional.of(Cli.DONE);
    }

    private static void opening(Terminal terminal) {
        terminal.out()
                .print(
                        GrooveText.of(
                                OpeningGroove.recipe().weave(), Tempo.DEFAULT, terminal.symbols()));
        terminal.out().println();
        terminal.out().println("Write its files with:\n  " + WRITE_ITS_FILES);
        terminal.out().println("All commands: java -jar target/kitweft.jar --help");
        terminal.out().flush();
    }
}
