package org.kitweft.cli;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.search.Serving;
import org.kitweft.groove.Role;
import org.kitweft.pattern.Catalogue;
import org.kitweft.pattern.Sticking;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the stickings of a length. */
@Command(
        name = "stickings",
        header = "List the stickings of so many strokes.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = {
            "List the stickings of N strokes by right and left hand, in the order of a dictionary"
                    + " with R before L. Filters can be combined.",
            "With --role, search for stickings and voicings that serve as time, fill or punch."
        },
        footer = {
            "",
            "Examples:",
            "  kitweft stickings 4",
            "  kitweft stickings 8 --starts-with RL --longest-run 2 --lead-changes",
            "  kitweft stickings 6 --family paradiddles --one-per-cycle --one-per-swap",
            "  kitweft stickings 8 --cycle-of RLRRLRLL",
            "  kitweft stickings 16 --role fill --best 6 --seed 1",
            "  kitweft stickings 32 --same-after-swap --longest-run 2 --take 10",
            "",
            "--json answers with {strokes, total, from, complete, stickings: [...]}: total is how"
                    + " many there are without filters, as a string of digits; complete is false"
                    + " where the search was cut off because what the filters ask for is too rare;"
                    + " the exit code is 3 then. With --role it answers with"
                    + " {strokes, role, seed, servings: [{sticking, score, difficulty, reasons:"
                    + " [...], options: [...]}]}."
        })
final class StickingsCommand implements Callable<Integer> {
    private static final int SHORT = 8;
    private static final int FEW = 100;

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "N", description = "The number of strokes, 1 to 512.")
    private int strokes;

    @Mixin private StickingFilters filters = new StickingFilters();

    @Option(
            names = "--from",
            paramLabel = "K",
            defaultValue = "0",
            description =
                    "The index of the first to list; indices count from 0. Default: ${DEFAULT-VALUE}.")
    private long from;

    @Option(
            names = "--take",
            paramLabel = "N",
            description = "How many to list. Default: all up to 8 strokes, else 100.")
    private @Nullable Long take;

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    @Mixin private RoleOptions roleOptions = new RoleOptions();

    @Spec private @Nullable CommandSpec spec;

    StickingsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Optional<Role> role =
                roleOptions.role(
                        Objects.requireNonNull(spec, "spec").commandLine().getParseResult());
        if (role.isPresent()) {
            List<Serving> servings = roleOptions.search(role.get(), strokes, terminal);
            long seed = roleOptions.seed();
            terminal.out()
                    .print(
                            json
                                    ? ServingText.json(strokes, role.get(), seed, servings)
                                    : ServingText.text(role.get(), seed, servings));
            return Cli.DONE;
        }
        if (from < 0) {
            throw new InputException("--from %d: expected 0 or more".formatted(from));
        }
        if (take != null && take < 0) {
            throw new InputException("--take %d: expected 0 or more".formatted(take));
        }
        Catalogue catalogue = new Catalogue(strokes);
        long most = take != null ? take : strokes <= SHORT ? Long.MAX_VALUE : FEW;
        FilteredStickings found = new FilteredStickings(catalogue, filters);
        try (Progress progress = new Progress(terminal)) {
            if (json) {
                List<Sticking> all = found.list(from, most, progress);
                json(catalogue, all, found.isComplete());
            } else {
                found.each(
                        from,
                        most,
                        progress,
                        sticking -> {
                            progress.clear();
                            terminal.out().println(sticking.text());
                        });
            }
        }
        terminal.out().flush();
        found.remark(from).ifPresent(terminal.err()::println);
        return found.isComplete() ? Cli.DONE : Cli.INCOMPLETE;
    }

    private void json(Catalogue catalogue, List<Sticking> found, boolean complete) {
        terminal.out()
                .print(
                        JsonText.of(
                                json -> {
                                    json.writeStartObject();
                                    json.writeNumberField("strokes", strokes);
                                    json.writeStringField("total", catalogue.total().toString());
                                    json.writeNumberField("from", from);
                                    json.writeBooleanField("complete", complete);
                                    json.writeArrayFieldStart("stickings");
                                    for (Sticking sticking : found) {
                                        json.writeString(sticking.text());
                                    }
                                    json.writeEndArray();
                                    json.writeEndObject();
                                }));
    }
}
