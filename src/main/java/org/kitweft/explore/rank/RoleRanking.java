package org.kitweft.explore.rank;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.kitweft.explore.role.RoleScale;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Cost;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Role;
import org.kitweft.kit.SoundName;

/**
 * Ranks variations by how well they serve a role, a few looks at a time, so that it can be watched
 * and stopped. Whatever was looked at, {@link #standing()} has the best of it, in exact order.
 *
 * <p>Looked at in turn: those whose limbs travel the least, unless many surfaces are wanted; then
 * rounds of uniform samples, each followed by a climb that changes one stroke at a time as long as
 * that helps, by turns from the best of the round and from one of the best so far with a few
 * strokes shaken; up to {@value #EXACT_UP_TO} variations in all then every other one, so that the
 * ranking becomes exact. Beyond that it never is: role fit is no sum over strokes, so the best of
 * 10^11 cannot be known without looking at them, and a good one may be missed.
 *
 * <p>The order of looks depends on the possibilities, role, weights and seed alone, not on how the
 * looks are portioned. For one thread at a time.
 */
public final class RoleRanking {
    /** So many variations are looked through whole: seconds of work. */
    public static final int EXACT_UP_TO = 100_000;

    /** Variations remembered, so that none is looked at twice: some 100 MB at the most. */
    public static final int MOST_LOOKS = 500_000;

    private static final int SHORTEST = 40;
    private static final int FEW_SURFACES = 2;
    private static final int SAMPLES_A_ROUND = 32;

    /** Search first, then look through: so the first rows are good ones. */
    private static final int LOOKS_BEFORE_ALL = 2_000;

    private static final int ELITE = 10;

    /** Where nearly everything was seen already, a look may take many draws: no more than these. */
    private static final int DRAWS_A_LOOK = 50;

    private final Possibilities possibilities;
    private final RoleScale scale;
    private final int most;
    private final SplittableRandom random;
    private final Map<BigInteger, Worth> seen = new HashMap<>();
    private final TreeSet<Ranked> best = new TreeSet<>(Ranked.BEST_FIRST);
    private final Changes changes;
    private Iterator<Variation> next = Collections.emptyIterator();
    private Optional<Climb> climb = Optional.empty();
    private Optional<Ranked> bestOfRound = Optional.empty();
    private Phase phase = Phase.BEGIN;
    private long rounds;

    private enum Phase {
        BEGIN,
        SHORTEST,
        SEARCH,
        ALL
    }

    /** What is remembered of each variation that was looked at. */
    private record Worth(boolean playable, double score, double cm) {
        static Worth of(Ranked ranked) {
            return new Worth(ranked.playable(), ranked.score(), ranked.cm());
        }

        boolean isBetterThan(Worth other) {
            if (playable != other.playable) {
                return playable;
            }
            return score > other.score || (score == other.score && cm < other.cm);
        }
    }

    /** A climb: where it stands, and which changes are still to be tried since it last moved. */
    private static final class Climb {
        private List<SoundName> at;
        private Worth worth;
        private final int[] order;
        private int place;
        private int untried;

        Climb(List<SoundName> at, Worth worth, int[] order) {
            this.at = at;
            this.worth = worth;
            this.order = order;
            this.untried = order.length;
        }
    }

    /**
     * A ranking that has not begun.
     *
     * @param most how many of the best to keep, at least 1
     * @param seed of the samples and climbs
     */
    public RoleRanking(
            Possibilities possibilities, Role role, RoleWeights weights, int most, long seed) {
        if (most < 1) {
            throw new IllegalArgumentException("the best %d: expected 1 or more".formatted(most));
        }
        this.possibilities = possibilities;
        this.scale = new RoleScale(possibilities.recipe().kit(), role, weights);
        this.most = most;
        this.random = new SplittableRandom(seed);
        this.changes = new Changes(possibilities);
    }

    /**
     * Looks at so many more, or as many as there are, or until told to stop.
     *
     * @return whether there is more to look at
     */
    public boolean look(int more, BooleanSupplier stop) {
        int until = (int) Math.min((long) seen.size() + more, MOST_LOOKS);
        long draws = (long) DRAWS_A_LOOK * more;
        while (seen.size() < until && draws-- > 0 && !isComplete() && !stop.getAsBoolean()) {
            step();
        }
        return !isComplete() && seen.size() < MOST_LOOKS;
    }

    /** How many have been looked at. */
    public int looked() {
        return seen.size();
    }

    /** The best so far. */
    public Standing standing() {
        return new Standing(new ArrayList<>(best), seen.size(), possibilities.total());
    }

    private boolean isComplete() {
        return BigInteger.valueOf(seen.size()).equals(possibilities.total());
    }

    private void step() {
        if (next.hasNext()) {
            Ranked ranked = rate(next.next());
            if (phase == Phase.SEARCH
                    && bestOfRound
                            .filter(b -> Ranked.BEST_FIRST.compare(b, ranked) <= 0)
                            .isEmpty()) {
                bestOfRound = Optional.of(ranked);
            }
        } else if (climb.isPresent()) {
            climbOn(climb.get());
        } else {
            nextPhase();
        }
    }

    private void nextPhase() {
        boolean small = possibilities.total().compareTo(BigInteger.valueOf(EXACT_UP_TO)) <= 0;
        if (phase == Phase.BEGIN) {
            phase = Phase.SHORTEST;
            next = shortest();
        } else if (small && Math.max(seen.size(), rounds * SAMPLES_A_ROUND) >= LOOKS_BEFORE_ALL) {
            phase = Phase.ALL;
            next = possibilities.from(BigInteger.ZERO).iterator();
        } else if (phase == Phase.SEARCH && bestOfRound.isPresent()) {
            climb = Optional.of(start());
            bestOfRound = Optional.empty();
        } else {
            phase = Phase.SEARCH;
            rounds++;
            next = possibilities.sample(SAMPLES_A_ROUND, random.nextLong()).iterator();
        }
    }

    /**
     * None where many surfaces are wanted: the least travel strikes few, so that finding those that
     * strike many can take longer than anyone waits, and could not be stopped.
     */
    private Iterator<Variation> shortest() {
        boolean many =
                possibilities.rules().stream()
                        .anyMatch(
                                rule ->
                                        rule instanceof Rule.Surfaces surfaces
                                                && surfaces.least() > FEW_SURFACES);
        return many
                ? Collections.emptyIterator()
                : possibilities.best(Cost.TRAVEL).limit(SHORTEST).iterator();
    }

    /** Odd rounds begin with their own best, even ones with one of the best so far, shaken. */
    private Climb start() {
        Ranked from = bestOfRound.orElseThrow();
        if (rounds % 2 == 0) {
            List<Ranked> elite = best.stream().limit(ELITE).toList();
            Ranked one = elite.get(random.nextInt(elite.size()));
            List<SoundName> shaken = changes.shaken(one.variation().sounds(), random);
            from = rate(new Variation(possibilities.indexOf(shaken), shaken));
        }
        return new Climb(from.variation().sounds(), Worth.of(from), changes.order(random));
    }

    /** Tries one change; it goes on from there if that helps, and ends where none helps. */
    private void climbOn(Climb now) {
        if (now.untried == 0) {
            climb = Optional.empty();
            return;
        }
        int change = now.order[now.place];
        now.place = (now.place + 1) % now.order.length;
        now.untried--;
        Optional<List<SoundName>> changed = changes.made(now.at, change);
        if (changed.isPresent()) {
            List<SoundName> sounds = changed.get();
            Worth worth = worth(sounds);
            if (worth.isBetterThan(now.worth)) {
                now.at = sounds;
                now.worth = worth;
                now.untried = now.order.length;
            }
        }
    }

    private Worth worth(List<SoundName> sounds) {
        BigInteger index = possibilities.indexOf(sounds);
        Worth known = seen.get(index);
        return known == null ? Worth.of(rate(new Variation(index, sounds))) : known;
    }

    private Ranked rate(Variation variation) {
        Worth known = seen.get(variation.index());
        if (known != null) {
            return new Ranked(variation, known.score, known.cm, known.playable);
        }
        Groove groove = possibilities.recipe(variation).weave();
        Ranked ranked =
                new Ranked(
                        variation,
                        scale.of(groove),
                        possibilities.travel(variation.sounds()).totalCm(),
                        groove.conflicts().isEmpty());
        seen.put(variation.index(), Worth.of(ranked));
        best.add(ranked);
        if (best.size() > most) {
            best.pollLast();
        }
        return ranked;
    }
}
