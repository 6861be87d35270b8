package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The regions into which a set of surfaces falls for each limb of a chain: no move leads out of a
 * region, so that the ways to play within the set are those within one region for each limb, added
 * up. Regions are smaller than the set, and many sets have the same ones.
 */
final class Regions {
    private final int words;

    /** For each limb the surfaces that it may strike, as bits. */
    private final long[][] reach;

    /** For each limb and surface, those that a move joins to it either way, as bits. */
    private final long[][][] near;

    Regions(Plan plan, Chain chain) {
        int m = plan.surfaces.size();
        words = Bounds.words(m);
        reach = new long[chain.limbs.length][];
        Arrays.setAll(reach, d -> Bounds.bits(chain.reach[d], words));
        near = new long[chain.limbs.length][m][words];
        for (Kind kind : List.of(chain.kinds).stream().distinct().toList()) {
            for (int slot = 0; slot < kind.limbs().length; slot++) {
                join(near[chain.dimension(kind.limbs()[slot])], kind, kind.moves().get(slot));
            }
        }
    }

    private static void join(long[][] near, Kind kind, Kind.Moves moves) {
        for (int to : kind.targets()) {
            for (int from = 0; from < near.length; from++) {
                if (moves.allows(from, to)) {
                    set(near[from], to);
                    set(near[to], from);
                }
            }
        }
    }

    private static void set(long[] bits, int surface) {
        bits[surface / Long.SIZE] |= 1L << surface;
    }

    /** All choices of one region for each limb of the chain; none if a limb finds no surface. */
    List<Bounds> of(BitSet set) {
        long[] surfaces = Bounds.bits(set, words);
        List<Bounds> choices = new ArrayList<>();
        choose(surfaces, new long[reach.length][], 0, choices);
        return choices;
    }

    private void choose(long[] surfaces, long[][] chosen, int d, List<Bounds> into) {
        if (d == chosen.length) {
            into.add(Bounds.of(chosen, words));
            return;
        }
        long[] rest = surfaces.clone();
        for (int w = 0; w < words; w++) {
            rest[w] &= reach[d][w];
        }
        for (int w = 0; w < words; w++) {
            while (rest[w] != 0) {
                chosen[d] = region(d, rest, w * Long.SIZE + Long.numberOfTrailingZeros(rest[w]));
                choose(surfaces, chosen, d + 1, into);
            }
        }
    }

    /** The region of a surface, taken off the rest. */
    private long[] region(int d, long[] rest, int first) {
        long[] region = new long[words];
        // Surfaces of the region that still have to be looked at, in any order.
        long[] open = new long[words];
        set(open, first);
        rest[first / Long.SIZE] &= ~(1L << first);
        for (int w = 0; w < words; ) {
            if (open[w] == 0) {
                w++;
                continue;
            }
            int surface = w * Long.SIZE + Long.numberOfTrailingZeros(open[w]);
            open[w] &= open[w] - 1;
            set(region, surface);
            for (int v = words - 1; v >= 0; v--) {
                long found = near[d][surface][v] & rest[v];
                rest[v] &= ~found;
                open[v] |= found;
                w = found != 0 ? Math.min(w, v) : w;
            }
        }
        return region;
    }

    /** The weights of sets added up for each choice of regions; what comes to 0 is left out. */
    List<Weighted> weigh(List<SurfaceSets.Weighted> sets) {
        Map<Bounds, BigInteger> weights = new LinkedHashMap<>();
        for (SurfaceSets.Weighted set : sets) {
            for (Bounds each : of(set.surfaces())) {
                weights.merge(each, set.weight(), BigInteger::add);
            }
        }
        List<Weighted> weighted = new ArrayList<>(weights.size());
        weights.forEach(
                (bounds, weight) -> {
                    if (weight.signum() != 0) {
                        weighted.add(new Weighted(bounds, weight));
                    }
                });
        return weighted;
    }

    /** A choice of regions and how often it counts; the weight may be negative. */
    record Weighted(Bounds bounds, BigInteger weight) {}
}
