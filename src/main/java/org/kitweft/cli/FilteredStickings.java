package org.kitweft.cli;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.kitweft.explore.search.SearchWatch;
import org.kitweft.pattern.Catalogue;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * Walks a catalogue for the stickings that filters let through, one at a time, and gives up where
 * they are too rare.
 */
final class FilteredStickings {
    /** So many are looked at; about half a minute. */
    private static final int MOST_LOOKED_AT = 1 << 22;

    private static final int SHOW_EVERY = 1 << 10;

    private final Stream<Sticking> candidates;
    private final Predicate<Sticking> asked;
    private int lookedAt;
    private long passed;
    private boolean gaveUp;

    FilteredStickings(Catalogue catalogue, StickingFilters filters) {
        Optional<Sticking> cycle = filters.cycle();
        List<Letter> start = filters.start();
        Optional<Integer> longest = filters.longestRunAllowed();
        Predicate<Sticking> startsRight = s -> startsWith(s, start);
        this.asked = filters.asked().and(startsRight);
        if (cycle.isPresent()) {
            this.candidates = rotations(cycle.get(), catalogue);
        } else if (longest.isPresent()) {
            this.candidates = catalogue.withRunsUpTo(longest.get());
        } else {
            this.candidates = catalogue.startingWith(start);
        }
    }

    private static boolean startsWith(Sticking sticking, List<Letter> start) {
        return start.size() <= sticking.size()
                && IntStream.range(0, start.size())
                        .allMatch(i -> sticking.struck().get(i).letter() == start.get(i));
    }

    private static Stream<Sticking> rotations(Sticking sticking, Catalogue catalogue) {
        boolean hands =
                sticking.struckCount() == sticking.size()
                        && sticking.letters().stream().allMatch(Letter::isOneHand);
        if (!hands || sticking.size() != catalogue.strokes()) {
            throw new InputException(
                    "--cycle-of %s: expected %d strokes of R and L"
                            .formatted(sticking.text(), catalogue.strokes()));
        }
        Sticking plain =
                new Sticking(
                        sticking.struck().stream()
                                .map(s -> org.kitweft.pattern.Stroke.of(s.letter()))
                                .toList());
        return IntStream.range(0, plain.size())
                .mapToObj(plain::rotated)
                .distinct()
                .sorted((one, other) -> index(one).compareTo(index(other)));
    }

    private static BigInteger index(Sticking sticking) {
        BigInteger index = BigInteger.ZERO;
        for (var stroke : sticking.struck()) {
            index = index.shiftLeft(1).add(BigInteger.valueOf(stroke.letter().ordinal()));
        }
        return index;
    }

    /** The stickings from an index on, counted from 0, at most {@code take}. */
    List<Sticking> list(long from, long take, SearchWatch watch) {
        List<Sticking> found = new ArrayList<>();
        each(from, take, watch, found::add);
        return found;
    }

    /** Hands on the same as they are found. */
    void each(long from, long take, SearchWatch watch, Consumer<Sticking> found) {
        Iterator<Sticking> walk = candidates.iterator();
        long given = 0;
        while (given < take && walk.hasNext()) {
            if (lookedAt == MOST_LOOKED_AT) {
                gaveUp = true;
                return;
            }
            Sticking sticking = walk.next();
            lookedAt++;
            if (lookedAt % SHOW_EVERY == 0) {
                watch.progress(lookedAt, MOST_LOOKED_AT);
            }
            if (asked.test(sticking)) {
                passed++;
                if (passed > from) {
                    found.accept(sticking);
                    given++;
                }
            }
        }
    }

    /** Whether the walk came to its end, rather than giving up. */
    boolean isComplete() {
        return !gaveUp;
    }

    /** What people should know of the walk: that it gave up, or found nothing. */
    Optional<String> remark(long from) {
        if (gaveUp) {
            return Optional.of(
                    String.format(
                            Locale.ROOT,
                            "the list is incomplete: stopped after looking at %,d stickings; ask for fewer strokes, or for more of the first with --starts-with",
                            lookedAt));
        }
        if (passed <= from) {
            return Optional.of(
                    passed == 0
                            ? "no sticking is so"
                            : "there are %d, none from the index %d on".formatted(passed, from));
        }
        return Optional.empty();
    }
}
