package org.kitweft.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.search.RoleSearch;
import org.kitweft.explore.search.RoleWish;
import org.kitweft.explore.search.Serving;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Role;
import org.kitweft.pattern.Letter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParseResult;

/** A role that stickings and voicings are searched for. */
final class RoleOptions {
    /** As the window's shortest search. */
    private static final int TRIES = 4000;

    private static final int MOST = 1000;

    @Option(
            names = "--role",
            paramLabel = "ROLE",
            description =
                    "Instead of the catalogue, search R, L, K and rests for N strokes, and a voicing with them, that serve a role: time, fill or punch. For some seconds; finds good ones, not surely the best.")
    private @Nullable String role;

    @Option(
            names = "--best",
            paramLabel = "N",
            defaultValue = "6",
            description = "With --role: how many to list. Default: ${DEFAULT-VALUE}.")
    private int best = 6;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description =
                    "With --role: the same seed finds the same again. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--meter",
            paramLabel = "N/4|N/8",
            defaultValue = "4/4",
            description = "With --role: the meter. Default: ${DEFAULT-VALUE}.")
    private String meter = "4/4";

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "4",
            description = "With --role: steps a beat, 1 to 8 or 12. Default: ${DEFAULT-VALUE}.")
    private int steps = 4;

    @Mixin private KitOptions kitOptions = new KitOptions();

    /** The options that mean nothing without a role. */
    private static final List<String> OF_ROLE =
            List.of("--best", "--seed", "--meter", "--steps", "--kit", "--left-handed");

    /** What {@code stickings} has for catalogues only. */
    private static final List<String> OF_CATALOGUE =
            List.of(
                    "--from",
                    "--take",
                    "--starts-with",
                    "--longest-run",
                    "--lead-changes",
                    "--family",
                    "--one-per-cycle",
                    "--one-per-swap",
                    "--same-after-swap",
                    "--cycle-of");

    /** The role that is asked for, if one is; what does not go with that is refused. */
    Optional<Role> role(ParseResult parsed) {
        if (role == null) {
            refuse(parsed, OF_ROLE, "goes with --role only");
            return Optional.empty();
        }
        refuse(parsed, OF_CATALOGUE, "goes with the catalogue, not with --role");
        String asked = role;
        return Optional.of(
                Stream.of(Role.values())
                        .filter(one -> one.id().equals(asked.toLowerCase(Locale.ROOT)))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new InputException(
                                                "--role %s: expected time, fill or punch"
                                                        .formatted(asked))));
    }

    private static void refuse(ParseResult parsed, List<String> names, String why) {
        for (String name : names) {
            if (parsed.hasMatchedOption(name)) {
                throw new InputException(name + " " + why);
            }
        }
    }

    /** Searches; takes some seconds. */
    List<Serving> search(Role wanted, int strokes, Terminal terminal) throws IOException {
        if (best < 1 || best > MOST) {
            throw new InputException("--best %d: expected 1 to %d".formatted(best, MOST));
        }
        RoleWish wish =
                new RoleWish(
                        wanted,
                        kitOptions.kit(),
                        new Grid(Meter.parse(meter), steps, Grid.STRAIGHT, false),
                        Optional.empty(),
                        strokes,
                        Set.of(Letter.R, Letter.L, Letter.K),
                        RoleWeights.DEFAULT);
        try (Progress progress = new Progress(terminal)) {
            return RoleSearch.search(wish, best, TRIES, seed, progress);
        }
    }

    long seed() {
        return seed;
    }
}
