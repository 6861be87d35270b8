package org.kitweft.cli;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.rank.Ranked;
import org.kitweft.explore.rank.RoleRanking;
import org.kitweft.explore.rank.Standing;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.trellis.Cost;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Role;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/**
 * Which of all variations are listed: the best by travel or for a role, a sample, or those from an
 * index on.
 */
final class ListOptions {
    private static final int FEW = 20;
    private static final int LOOKS = 20_000;

    /** Between two glances at how far it is; long stickings take milliseconds each. */
    private static final int AT_A_TIME = 20;

    @ArgGroup(exclusive = true)
    private @Nullable Way way;

    @Option(
            names = "--take",
            paramLabel = "N",
            defaultValue = "" + FEW,
            description = "With --from, how many. Default: ${DEFAULT-VALUE}.")
    private int take = FEW;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description =
                    "With --sample or --as, where chance starts: the same seed gives the same ones. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--as",
            paramLabel = "ROLE",
            description =
                    "With --best, those that serve best as time, fill or punch instead. All are looked"
                            + " at where there are at most 100,000; else some, and it says how many.")
    private @Nullable String as;

    @Option(
            names = "--looks",
            paramLabel = "N",
            defaultValue = "" + LOOKS,
            description =
                    "With --as, how many to look at where not all are. Default: ${DEFAULT-VALUE}; --seed"
                            + " says where it starts.")
    private int looks = LOOKS;

    /** One of three ways. */
    static final class Way {
        @Option(
                names = "--best",
                paramLabel = "N",
                description = "The N whose limbs travel the least in all, the shortest way first.")
        private @Nullable Integer best;

        @Option(
                names = "--sample",
                paramLabel = "N",
                description = "N drawn at random, each variation with the same chance.")
        private @Nullable Integer sample;

        @Option(
                names = "--from",
                paramLabel = "K",
                description =
                        "From the index K on, in the order of the choices; the first has the index 0. This is the default, from 0.")
        private @Nullable BigInteger from;
    }

    /**
     * What is listed.
     *
     * @param variations in their order, made as they are asked for
     * @param words which they are
     * @param role the one they are ranked by, if they are
     */
    record Listed(Stream<Variation> variations, String words, Optional<Role> role) {}

    /** Those asked for. */
    Listed of(Possibilities possibilities, Terminal terminal) {
        boolean best = way != null && way.best != null;
        if (as != null && !best) {
            throw new InputException("--as %s: expected --best N with it".formatted(as));
        }
        if (way != null && way.best != null) {
            check("--best", way.best);
            return as == null
                    ? new Listed(
                            possibilities.best(Cost.TRAVEL).limit(way.best),
                            "those whose limbs travel the least",
                            Optional.empty())
                    : bestAs(possibilities, role(as), way.best, terminal);
        }
        if (way != null && way.sample != null) {
            check("--sample", way.sample);
            return new Listed(
                    possibilities.sample(way.sample, seed).stream(),
                    "drawn at random, seed " + seed,
                    Optional.empty());
        }
        check("--take", take);
        BigInteger from = way != null && way.from != null ? way.from : BigInteger.ZERO;
        possibilities.get(from);
        return new Listed(
                possibilities.from(from).limit(take),
                "in the order of the choices",
                Optional.empty());
    }

    private Listed bestAs(Possibilities possibilities, Role role, int most, Terminal terminal) {
        check("--looks", looks);
        RoleRanking ranking = new RoleRanking(possibilities, role, RoleWeights.DEFAULT, most, seed);
        boolean few =
                possibilities.total().compareTo(BigInteger.valueOf(RoleRanking.EXACT_UP_TO)) <= 0;
        int until = few ? RoleRanking.EXACT_UP_TO : Math.min(looks, RoleRanking.MOST_LOOKS);
        int all = possibilities.total().min(BigInteger.valueOf(until)).intValueExact();
        try (Progress progress = new Progress(terminal)) {
            boolean more = true;
            while (more && ranking.looked() < until) {
                more = ranking.look(Math.min(AT_A_TIME, until - ranking.looked()), () -> false);
                progress.progress(ranking.looked(), all);
            }
        }
        Standing standing = ranking.standing();
        String looked = GrooveText.exact(BigInteger.valueOf(standing.looked()));
        return new Listed(
                standing.best().stream().map(Ranked::variation),
                standing.isComplete()
                        ? "the best as %s, all %s looked at".formatted(role.id(), looked)
                        : "the best as %s of %s looked at, there may be better ones"
                                .formatted(role.id(), looked),
                Optional.of(role));
    }

    private static Role role(String id) {
        return Arrays.stream(Role.values())
                .filter(role -> role.id().equals(id.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(
                        () ->
                                new InputException(
                                        "--as %s: expected time, fill or punch".formatted(id)));
    }

    private static void check(String option, int count) {
        if (count < 1) {
            throw new InputException("%s %d: expected 1 or more".formatted(option, count));
        }
    }
}
