package org.kitweft.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.StickingFamily;
import org.kitweft.pattern.StickingTraits;
import picocli.CommandLine.Option;

/** What a teacher asks of stickings. */
final class StickingFilters {
    @Option(
            names = "--starts-with",
            paramLabel = "LETTERS",
            description = "The first strokes, as in RL.")
    private @Nullable String startsWith;

    @Option(
            names = "--longest-run",
            paramLabel = "N",
            description =
                    "At most so many strokes in a row by one hand, played over and over, 1 or more.")
    private @Nullable Integer longestRun;

    @Option(
            names = "--lead-changes",
            description =
                    "The lead changes over on repeat: the last stroke is by the hand that played the first.")
    private boolean leadChanges;

    @Option(
            names = "--family",
            paramLabel = "NAME",
            description =
                    "singles (the hands alternate), doubles (each hand strokes twice), paradiddles (singles and doubles mixed) or longer-runs.")
    private @Nullable String family;

    @Option(
            names = "--one-per-cycle",
            description = "Of all that are one cycle, entered at other strokes, only the first.")
    private boolean onePerCycle;

    @Option(
            names = "--one-per-swap",
            description = "Of two that differ by swapped hands only the first.")
    private boolean onePerSwap;

    @Option(
            names = "--same-after-swap",
            description =
                    "Those that are the same cycle again with hands swapped, as RLRR LRLL is.")
    private boolean sameAfterSwap;

    @Option(
            names = "--cycle-of",
            paramLabel = "STICKING",
            description = "Those that are this one, entered at any of its strokes.")
    private @Nullable String cycleOf;

    /** The sticking whose cycle is asked for. */
    Optional<Sticking> cycle() {
        return Optional.ofNullable(cycleOf).map(Sticking::parse);
    }

    /** The longest run that the filters allow, if they bound it. */
    Optional<Integer> longestRunAllowed() {
        Optional<Integer> byFamily =
                wanted().map(
                                wanted ->
                                        switch (wanted) {
                                            case SINGLES -> 1;
                                            case DOUBLES, PARADIDDLES -> 2;
                                            case LONGER_RUNS -> Integer.MAX_VALUE;
                                        });
        if (longestRun == null) {
            return byFamily;
        }
        if (longestRun < 1) {
            throw new InputException("--longest-run %d: expected 1 or more".formatted(longestRun));
        }
        return Optional.of(Math.min(longestRun, byFamily.orElse(Integer.MAX_VALUE)));
    }

    /** The letters that come first. */
    List<Letter> start() {
        if (startsWith == null) {
            return List.of();
        }
        List<Letter> letters =
                Sticking.parse(startsWith).struck().stream().map(s -> s.letter()).toList();
        if (!letters.stream().allMatch(Letter::isOneHand)) {
            throw new InputException(
                    "--starts-with %s: expected R and L only, the catalogue is of hands"
                            .formatted(startsWith));
        }
        return letters;
    }

    /** Everything that is asked. */
    Predicate<Sticking> asked() {
        Predicate<Sticking> asked = any -> true;
        if (longestRun != null) {
            int most = longestRun;
            asked = asked.and(s -> StickingTraits.longestRunOnRepeat(s) <= most);
        }
        if (leadChanges) {
            asked = asked.and(StickingTraits::leadChangesOnRepeat);
        }
        Optional<StickingFamily> wanted = wanted();
        if (wanted.isPresent()) {
            asked = asked.and(s -> StickingTraits.family(s) == wanted.get());
        }
        if (onePerCycle && onePerSwap) {
            return asked.and(StickingTraits::firstOfItsCycleAndSwap).and(swapped());
        }
        if (onePerCycle) {
            asked = asked.and(StickingTraits::firstOfItsCycle);
        }
        if (onePerSwap) {
            asked = asked.and(StickingTraits::firstOfItsSwap);
        }
        return asked.and(swapped());
    }

    private Predicate<Sticking> swapped() {
        return sameAfterSwap ? StickingTraits::sameAfterSwappingHands : any -> true;
    }

    private Optional<StickingFamily> wanted() {
        if (family == null) {
            return Optional.empty();
        }
        for (StickingFamily one : StickingFamily.values()) {
            if (one.id().equals(family)) {
                return Optional.of(one);
            }
        }
        throw new InputException(
                "--family %s: expected singles, doubles, paradiddles or longer-runs"
                        .formatted(family));
    }
}
