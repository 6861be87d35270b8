package org.kitweft;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.kitweft.cli.Start;
import org.kitweft.cli.Terminal;
import org.kitweft.ui.window.OffScreen;

/**
 * What a start of the program does, without a display and without a word. The build runs it once to
 * record the classes that are loaded into {@code target/kitweft.jsa}; no user does.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /** Weaves, counts and paints the panels. */
    public static void main(String[] args) throws InterruptedException, InvocationTargetException {
        PrintStream nowhere =
                new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Terminal silent = new Terminal(nowhere, nowhere, StandardCharsets.UTF_8);
        Start.run(silent, Optional.empty());
        Start.run(
                silent,
                Optional.empty(),
                "count",
                "RLRR",
                "--choose",
                "R=snare,ride",
                "--choose",
                "L=snare",
                "--json");
        Start.run(silent, Optional.empty(), "list", "RLRR", "--best", "1");
        EventQueue.invokeAndWait(() -> OffScreen.paint(new Dimension(1280, 800)));
        System.exit(0);
    }
}
