package org.kitweft.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program: what stands before a command. */
@Command(
        name = "kitweft",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "[COMMAND]",
        description = {
            "Kitweft weaves stickings into grooves on a drum set: seen, heard, counted, taken home.",
            "Without a command it opens its window."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:the input is wrong, or a file cannot be read or written",
            "2:wrong usage",
            "3:the answer is incomplete: a search for what is too rare was cut off"
        },
        footer = {
            "",
            "Each command has --help with examples. Results go to standard output, messages to"
                    + " standard error."
        })
final class KitweftCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Spec private @Nullable CommandSpec spec;

    KitweftCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (spec != null) {
            throw new ParameterException(spec.commandLine(), "expected a command");
        }
        terminal.err().println("expected a command");
        return Cli.WRONG_USAGE;
    }
}
