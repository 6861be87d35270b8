package org.kitweft.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.sound.Course;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.synth.BuiltIn;
import picocli.CommandLine.Option;

/** How a groove is played, live or into a file. */
final class PlayOptions {
    @Option(
            names = "--tempo",
            paramLabel = "BPM",
            defaultValue = "90",
            description = "Beats a minute, 20 to 400. Default: ${DEFAULT-VALUE}.")
    private int tempo = Tempo.DEFAULT.beatsPerMinute();

    @Option(
            names = "--loops",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "How often the bars are played, with --play and in MIDI and WAV files, 1 to 10000. Default: ${DEFAULT-VALUE}.")
    private int loops = 1;

    @Option(
            names = "--count-in",
            paramLabel = "BARS",
            defaultValue = "0",
            description = "Bars of click before the first, 0 to 8. Default: ${DEFAULT-VALUE}.")
    private int countIn;

    @Option(
            names = "--bank",
            paramLabel = "FILE",
            description =
                    "The sound bank for --play and --wav, an SF2 or DLS file. Default: Kitweft's own, computed the first time.")
    private @Nullable Path bank;

    @Option(names = "--click", description = "Click on every beat.")
    private boolean click;

    @Option(
            names = "--tempo-steps",
            paramLabel = "BPM,BPM,…",
            description =
                    "Tempi one after the other in MIDI and WAV files, as in 60,66,72; each for as many loops as --loops says.")
    private @Nullable String tempoSteps;

    /** Whether several tempi are to follow each other. */
    boolean hasTempoSteps() {
        return tempoSteps != null;
    }

    Tempo tempo() {
        return new Tempo(tempo);
    }

    Optional<Path> bank() {
        return Optional.ofNullable(bank);
    }

    /** The bank that was asked for, or the default one; may take a while. */
    Bank loadBank() throws IOException {
        return bank == null ? BuiltIn.ofTheUser().load() : Bank.read(bank);
    }

    private Course course() {
        return tempoSteps == null
                ? Course.STEADY
                : new Course.Stepped(TempoSteps.parse(tempoSteps), loops, false);
    }

    PlaySettings settings() {
        if (loops < 1) {
            throw new InputException(
                    "--loops %d: expected 1 to %d".formatted(loops, PlaySettings.MOST_LOOPS));
        }
        return PlaySettings.DEFAULT
                .withTempo(tempo())
                .withLoops(loops)
                .withCourse(course())
                .withCountInBars(countIn)
                .withClick(click);
    }
}
