package org.kitweft;

import java.util.Locale;
import java.util.Optional;
import org.kitweft.cli.Start;
import org.kitweft.cli.Terminal;

/** Entry point of the program. */
public final class Kitweft {
    private Kitweft() {}

    /** Runs the command in the arguments, or without any opens the window. */
    public static void main(String[] args) {
        // Numbers and letter case are to be the same in every country: commands are read by
        // scripts.
        Locale.setDefault(Locale.ROOT);
        Start.run(Terminal.system(), Optional.empty(), args).ifPresent(System::exit);
    }
}
