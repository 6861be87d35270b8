package org.kitweft.cli;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.trellis.Cost;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Which of all variations are listed: the best, a sample, or those from an index on. */
final class ListOptions {
    private static final int FEW = 20;

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
                    "With --sample, where the draw starts: the same seed draws the same ones. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

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

    /** Those asked for. */
    List<Variation> of(Possibilities possibilities) {
        if (way != null && way.best != null) {
            check("--best", way.best);
            return possibilities.best(Cost.TRAVEL).limit(way.best).toList();
        }
        if (way != null && way.sample != null) {
            check("--sample", way.sample);
            return possibilities.sample(way.sample, seed);
        }
        check("--take", take);
        BigInteger from = way != null && way.from != null ? way.from : BigInteger.ZERO;
        possibilities.get(from);
        try (Stream<Variation> all = possibilities.from(from)) {
            return all.limit(take).toList();
        }
    }

    /** What they are, in words. */
    String words() {
        if (way != null && way.best != null) {
            return "those whose limbs travel the least";
        }
        return way != null && way.sample != null
                ? "drawn at random, seed " + seed
                : "in the order of the choices";
    }

    private static void check(String option, int count) {
        if (count < 1) {
            throw new InputException("%s %d: expected 1 or more".formatted(option, count));
        }
    }
}
