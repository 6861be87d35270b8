package org.kitweft.groove;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;

/**
 * The sounding result: hits in time, with all that they were woven from. Immutable; made by {@link
 * Weaver}.
 *
 * @param sticking what was woven
 * @param kit on which kit
 * @param voicing with which voicing
 * @param grid on which grid
 * @param bars how many bars it has, 1 to {@value #MAX_BARS}
 * @param cycleBars after how many bars everything, layers included, comes round
 * @param hits in the order of {@link Hit#IN_TIME}
 * @param conflicts what cannot be played as written, in order of first occurrence
 */
public record Groove(
        Sticking sticking,
        Kit kit,
        Voicing voicing,
        Grid grid,
        int bars,
        long cycleBars,
        List<Hit> hits,
        List<Conflict> conflicts) {
    /** The most bars of a groove. */
    public static final int MAX_BARS = 512;

    public Groove {
        Objects.requireNonNull(sticking, "sticking");
        Objects.requireNonNull(kit, "kit");
        Objects.requireNonNull(voicing, "voicing");
        Objects.requireNonNull(grid, "grid");
        checkBars(bars);
        hits = List.copyOf(hits);
        conflicts = List.copyOf(conflicts);
    }

    static void checkBars(int bars) {
        if (bars < 1 || bars > MAX_BARS) {
            throw new IllegalArgumentException(
                    "%d bars: expected 1 to %d".formatted(bars, MAX_BARS));
        }
    }

    /** Its length in ticks. */
    public long ticks() {
        return bars * grid.meter().barTicks();
    }

    /** Whether the bars are a whole number of cycles, so that it loops without a break in order. */
    public boolean comesRound() {
        return bars % cycleBars == 0;
    }

    /**
     * The index, from 0, of the stroke of the sticking that stands at a step, whether it is struck,
     * tacet or a rest.
     */
    public int strokeAt(Place place) {
        int step = (place.bar() - 1) * grid.stepsPerBar() + place.step() - 1;
        return Cycle.of(sticking.size(), grid, List.of()).strokeAt(step, sticking.size(), grid);
    }

    /** The hits of one bar, counted from 1. */
    public List<Hit> hitsInBar(int bar) {
        List<Hit> inBar = new ArrayList<>();
        for (Hit hit : hits) {
            if (hit.place().bar() == bar) {
                inBar.add(hit);
            }
        }
        return inBar;
    }

    /**
     * Some of its bars as a groove of their own, as they sound here.
     *
     * @param from the first bar, from 1
     * @param to the last bar
     * @throws IllegalArgumentException if the groove does not have them
     */
    public Groove bars(int from, int to) {
        if (from < 1 || to < from || to > bars) {
            throw new IllegalArgumentException(
                    "bars %d to %d: the groove has bars 1 to %d".formatted(from, to, bars));
        }
        int earlier = from - 1;
        List<Hit> cut =
                hits.stream()
                        .filter(hit -> hit.place().bar() >= from && hit.place().bar() <= to)
                        .map(hit -> hit.earlier(earlier, earlier * grid.meter().barTicks()))
                        .toList();
        return new Groove(
                sticking,
                kit,
                voicing,
                grid,
                to - earlier,
                cycleBars,
                cut,
                Conflicts.in(cut, kit, nothingToStrike(from, to)));
    }

    private List<Conflict> nothingToStrike(int from, int to) {
        List<Conflict> moved = new ArrayList<>();
        for (Conflict conflict : conflicts) {
            if (conflict instanceof Conflict.NothingToStrike nothing) {
                List<Place> places =
                        nothing.places().stream()
                                .filter(place -> place.bar() >= from && place.bar() <= to)
                                .map(place -> new Place(place.bar() - from + 1, place.step()))
                                .toList();
                if (!places.isEmpty()) {
                    moved.add(new Conflict.NothingToStrike(nothing.letter(), places));
                }
            }
        }
        return moved;
    }
}
