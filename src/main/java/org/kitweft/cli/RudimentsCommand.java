package org.kitweft.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.kitweft.pattern.Rudiment;
import org.kitweft.pattern.Rudiments;
import org.kitweft.pattern.StickingTraits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the rudiments, or tells of one. */
@Command(
        name = "rudiments",
        header = "List the 40 international rudiments, or tell of one.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = "The sheet of 1984: each rudiment with its number, name and sticking.",
        footer = {
            "",
            "Examples:",
            "  kitweft rudiments",
            "  kitweft rudiments 16",
            "  kitweft rudiments \"flam tap\" --json",
            "",
            "--json answers with a list, or for a number or whole name with one, of {number, name, family, sticking, evenSteps,"
                    + " rhythm}: evenSteps tells whether every stroke lasts the same as printed."
        })
final class RudimentsCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "NAME|NUMBER",
            description =
                    "One rudiment, 1 to 40 or by its name, or those whose names contain this.")
    private @Nullable String wanted;

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    RudimentsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Rudiments rudiments = Rudiments.load();
        if (wanted == null) {
            terminal.out().print(several(rudiments.all()));
        } else {
            Optional<Rudiment> one = rudiments.find(wanted);
            terminal.out()
                    .print(
                            one.isPresent()
                                    ? one(one.get())
                                    : several(containing(wanted, rudiments)));
        }
        return Cli.DONE;
    }

    private String one(Rudiment rudiment) {
        return json ? JsonText.of(out -> write(rudiment, out)) : text(rudiment);
    }

    private String several(List<Rudiment> rudiments) {
        return json ? json(rudiments) : table(rudiments);
    }

    private static List<Rudiment> containing(String part, Rudiments rudiments) {
        String wanted = part.toLowerCase(Locale.ROOT).strip();
        if (wanted.matches("[-+]?[0-9]+")) {
            throw new InputException(
                    "rudiment %1$s: there are %2$d, expected a number from 1 to %2$d"
                            .formatted(wanted, rudiments.all().size()));
        }
        List<Rudiment> found =
                rudiments.all().stream()
                        .filter(r -> r.name().toLowerCase(Locale.ROOT).contains(wanted))
                        .toList();
        if (found.isEmpty() || wanted.isEmpty()) {
            throw new InputException(
                    "rudiment \"%s\": expected a number from 1 to 40, a name or a part of one; without it all are listed"
                            .formatted(part));
        }
        return found;
    }

    private static String table(List<Rudiment> all) {
        int names = all.stream().mapToInt(r -> r.name().length()).max().orElse(0);
        return all.stream()
                .map(
                        r ->
                                "%2d  %s%s  %s\n"
                                        .formatted(
                                                r.number(),
                                                r.name(),
                                                " ".repeat(names - r.name().length()),
                                                r.sticking().text()))
                .collect(Collectors.joining());
    }

    private static String text(Rudiment rudiment) {
        return """
                %d  %s
                Family:    %s
                Sticking:  %s
                Rhythm:    %s
                On repeat: %s
                """
                .formatted(
                        rudiment.number(),
                        rudiment.name(),
                        rudiment.family(),
                        rudiment.sticking().text(),
                        rudiment.evenSteps()
                                ? rudiment.rhythm()
                                : rudiment.rhythm() + " (the letters alone hold here)",
                        StickingTraits.leadChangesOnRepeat(rudiment.sticking())
                                ? "the lead changes over"
                                : "the lead stays");
    }

    private static String json(List<Rudiment> all) {
        return JsonText.of(
                out -> {
                    out.writeStartArray();
                    for (Rudiment rudiment : all) {
                        write(rudiment, out);
                    }
                    out.writeEndArray();
                });
    }

    private static void write(Rudiment rudiment, JsonGenerator out) throws IOException {
        out.writeStartObject();
        out.writeNumberField("number", rudiment.number());
        out.writeStringField("name", rudiment.name());
        out.writeStringField("family", rudiment.family());
        out.writeStringField("sticking", rudiment.sticking().text());
        out.writeBooleanField("evenSteps", rudiment.evenSteps());
        out.writeStringField("rhythm", rudiment.rhythm());
        out.writeEndObject();
    }
}
