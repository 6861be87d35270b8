package org.kitweft.ui.explore;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.kitweft.explore.rank.RoleRanking;
import org.kitweft.explore.rank.Standing;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.groove.Role;
import org.kitweft.ui.count.Numbers;
import org.kitweft.ui.task.Tasks;

/**
 * A ranking by role under way, in slices off the event thread: after each one the best so far can
 * be shown. It pauses by itself after so many looks, can be stopped, and goes on where it was. For
 * one thread.
 */
final class RankedSearch {
    /** So many looks at a time where not all can be had: some seconds. */
    static final int LOOKS = 20_000;

    /** The best that are kept for the list. */
    static final int MOST = 1_000;

    private static final long SEED = 1;
    private static final long FIRST_SLICE_MILLIS = 25;
    private static final long SLICE_MILLIS = 120;

    /** A ranking and whether it is wanted; only ever one slice of it runs at a time. */
    private record Work(RoleRanking ranking, AtomicBoolean wanted) {}

    private record Slice(Standing standing, boolean more) {}

    private static final Standing NOTHING = new Standing(List.of(), 0, BigInteger.ZERO);

    private final Tasks tasks;
    private final Runnable told;
    private Optional<Work> work = Optional.empty();
    private Tasks.Running running = () -> {};
    private Standing standing = NOTHING;
    private boolean sliceRuns;
    private boolean more;
    private int until;
    private String fault = "";

    RankedSearch(Tasks tasks, Runnable told) {
        this.tasks = tasks;
        this.told = told;
    }

    /** Searches anew. */
    void begin(Possibilities possibilities, Role role, RoleWeights weights) {
        end();
        work =
                Optional.of(
                        new Work(
                                new RoleRanking(possibilities, role, weights, MOST, SEED),
                                new AtomicBoolean(true)));
        more = true;
        until = looksFor(possibilities.total());
        slice(FIRST_SLICE_MILLIS);
    }

    /** All where there are not too many, else so many at a time. */
    private static int looksFor(BigInteger total) {
        return total.compareTo(BigInteger.valueOf(RoleRanking.EXACT_UP_TO)) <= 0
                ? RoleRanking.EXACT_UP_TO
                : LOOKS;
    }

    /** Drops the search and what it found. */
    void end() {
        work.ifPresent(w -> w.wanted().set(false));
        running.stop();
        work = Optional.empty();
        standing = NOTHING;
        sliceRuns = false;
        more = false;
        fault = "";
    }

    /** Stops; what was found stays, and it can go on. */
    void stop() {
        work.ifPresent(w -> w.wanted().set(false));
    }

    /** Goes on for as many looks as at first. */
    void goOn() {
        work.ifPresent(
                w -> {
                    w.wanted().set(true);
                    until = Math.max(until, standing.looked() + LOOKS);
                    if (!sliceRuns && more) {
                        slice(SLICE_MILLIS);
                    }
                });
    }

    private void slice(long millis) {
        Work now = work.orElseThrow();
        int looks = until - standing.looked();
        sliceRuns = true;
        running =
                tasks.run(
                        "",
                        progress -> {
                            long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
                            boolean goesOn =
                                    now.ranking()
                                            .look(
                                                    looks,
                                                    () ->
                                                            !now.wanted().get()
                                                                    || System.nanoTime() > end);
                            return new Slice(now.ranking().standing(), goesOn);
                        },
                        slice -> sliced(now, slice),
                        failure -> {
                            sliceRuns = false;
                            more = false;
                            fault = String.valueOf(failure.getMessage());
                            told.run();
                        });
    }

    private void sliced(Work now, Slice slice) {
        sliceRuns = false;
        standing = slice.standing();
        more = slice.more();
        if (more && now.wanted().get() && standing.looked() < until) {
            slice(SLICE_MILLIS);
        }
        told.run();
    }

    /** How it stands. */
    Standing standing() {
        return standing;
    }

    /** Whether it is searching now. */
    boolean isRunning() {
        return sliceRuns;
    }

    /** Whether it could go on. */
    boolean canGoOn() {
        return !sliceRuns && more;
    }

    /** How far it is, 0 to 1, of what it will look at before it pauses. */
    double part() {
        double goal = Math.min(until, Math.max(1, standing.total().doubleValue()));
        return Math.min(1, standing.looked() / goal);
    }

    /** What the list holds, in words that promise no more than is known. */
    String words() {
        if (!fault.isEmpty()) {
            return "search failed: " + fault;
        }
        String looked = Numbers.exact(BigInteger.valueOf(standing.looked()));
        if (standing.isComplete() && standing.looked() > 0) {
            return "exact: all %s looked at".formatted(looked);
        }
        return "best of the %s looked at".formatted(looked);
    }
}
