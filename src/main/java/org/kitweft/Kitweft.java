package org.kitweft;

import java.util.Locale;
import java.util.Optional;
import org.kitweft.cli.Start;
import org.kitweft.cli.Terminal;
import org.kitweft.sound.live.LivePlayer;
import org.kitweft.sound.synth.BuiltIn;
import org.kitweft.ui.window.MainWindow;

/** Entry point of the program. */
public final class Kitweft {
    private Kitweft() {}

    /** Runs the command in the arguments, or without any opens the window. */
    public static void main(String[] args) {
        // Numbers and letter case are to be the same in every country: commands are read by
        // scripts.
        Locale.setDefault(Locale.ROOT);
        Start.run(Terminal.system(), Optional.of(Kitweft::window), args).ifPresent(System::exit);
    }

    private static void window() {
        MainWindow.open(LivePlayer::open, BuiltIn.ofTheUser(), Optional.empty());
    }
}
