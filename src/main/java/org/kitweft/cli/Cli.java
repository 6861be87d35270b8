package org.kitweft.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.kitweft.pattern.TextFormatException;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Runs one command. Exit code {@value #DONE}: done; {@value #WRONG_INPUT}: the input is wrong, or a
 * file cannot be read or written, told in one line on {@code err} (a text of ours with a caret
 * under the fault below); {@value #WRONG_USAGE}: the command was not called as it can be; {@value
 * #INCOMPLETE}: a search was cut off, and a line on {@code err} says so.
 */
public final class Cli {
    /** Exit code: done. */
    public static final int DONE = 0;

    /** Exit code: the input is wrong. */
    public static final int WRONG_INPUT = 1;

    /** Exit code: wrong usage. */
    public static final int WRONG_USAGE = 2;

    /** Exit code: what was answered is right, but not all that was asked for. */
    public static final int INCOMPLETE = 3;

    /** In the order of the help. Only the one that is called is looked into: that saves time. */
    private static final Map<String, Function<Terminal, Object>> COMMANDS = commands();

    /** What stickings are written with; the name of every option has other letters too. */
    private static final Pattern STICKING = Pattern.compile("[-RLKHBrlz0-9>()\\[\\]*\\s]+");

    private Cli() {}

    private static Map<String, Function<Terminal, Object>> commands() {
        Map<String, Function<Terminal, Object>> commands = new LinkedHashMap<>();
        commands.put("groove", GrooveCommand::new);
        commands.put("count", CountCommand::new);
        commands.put("list", ListCommand::new);
        commands.put("stickings", StickingsCommand::new);
        commands.put("rudiments", RudimentsCommand::new);
        commands.put("kits", KitsCommand::new);
        commands.put("demo", DemoCommand::new);
        return commands;
    }

    /** Runs the command of the arguments; returns its exit code. */
    public static int run(Terminal terminal, String... args) {
        CommandLine root = new CommandLine(new KitweftCommand(terminal));
        if (args.length > 0 && COMMANDS.containsKey(args[0])) {
            root.addSubcommand(args[0], COMMANDS.get(args[0]).apply(terminal));
        } else {
            COMMANDS.forEach((name, command) -> root.addSubcommand(name, command.apply(terminal)));
        }
        root.setOut(terminal.outWriter())
                .setErr(terminal.errWriter())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setExpandAtFiles(false)
                .setUsageHelpAutoWidth(false)
                .setParameterExceptionHandler((fault, any) -> usage(fault, terminal))
                .setExecutionExceptionHandler((fault, any, parsed) -> failure(fault, terminal));
        int code = root.execute(restFirst(args));
        terminal.out().flush();
        return terminal.out().checkError() ? WRONG_INPUT : code;
    }

    /**
     * A sticking that starts with a rest looks like an option; right after the command it is taken
     * for what it is, since there are no other short options than these two.
     */
    private static String[] restFirst(String[] args) {
        List<String> moved = new ArrayList<>(List.of(args));
        if (args.length < 2
                || !args[1].startsWith("-")
                || (args[1].startsWith("--") && !STICKING.matcher(args[1]).matches())
                || List.of("-h", "-V").contains(args[1])
                || moved.contains("--")) {
            return args;
        }
        moved.remove(1);
        moved.addAll(List.of("--", args[1]));
        return moved.toArray(String[]::new);
    }

    private static int usage(ParameterException fault, Terminal terminal) {
        String command = fault.getCommandLine().getCommandSpec().qualifiedName();
        String message = firstLine(String.valueOf(fault.getMessage())).replaceFirst("^Error: ", "");
        terminal.err()
                .println(
                        "kitweft: "
                                + message.replaceAll("not an? (int|long)", "not a whole number"));
        UnmatchedArgumentException.printSuggestions(fault, terminal.errWriter());
        terminal.err().println("Try: " + command + " --help");
        return WRONG_USAGE;
    }

    private static int failure(Exception fault, Terminal terminal) {
        terminal.out().flush();
        terminal.err().println("kitweft: " + firstLine(message(fault)));
        if (fault instanceof TextFormatException text) {
            text.excerpt().lines().forEach(line -> terminal.err().println("  " + line));
        }
        return WRONG_INPUT;
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("");
    }

    private static String message(Exception fault) {
        if (fault instanceof UncheckedIOException wrapped) {
            return message(wrapped.getCause());
        }
        if (fault instanceof FileAlreadyExistsException there) {
            return there.getFile() + " exists already and was not replaced; --force replaces it";
        }
        if (fault instanceof NoSuchFileException missing) {
            return missing.getFile() + ": there is no such file";
        }
        if (fault instanceof AccessDeniedException denied) {
            return denied.getFile() + ": access is denied";
        }
        boolean expected =
                fault instanceof IllegalArgumentException || fault instanceof IOException;
        String message = fault.getMessage();
        if (message == null || !expected) {
            return "this should not have happened (%s); please report it with the command you typed"
                    .formatted(fault);
        }
        return message;
    }
}
