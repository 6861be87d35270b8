package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.apache.commons.numbers.combinatorics.Combinations;

/**
 * Sets of surfaces with weights, such that the ways to play within each set, weighted and added up,
 * are the ways that use between a least and a most of different surfaces.
 *
 * <p>Inclusion and exclusion: let g(T) be the ways to play within T, and m the number of surfaces.
 * Ways that use exactly d surfaces number &Sigma;<sub>T</sub> (&minus;1)<sup>d&minus;|T|</sup>
 * C(m&minus;|T|, d&minus;|T|) g(T). Source: Stanley, <i>Enumerative Combinatorics</i> 1, 2nd ed.,
 * section 2.1. Sums over d from least to most leave weights by the size of T alone, and many are 0.
 * The same weights hold when the beginning of a pattern is given: sets that lack one of its
 * surfaces have no ways.
 */
final class SurfaceSets {
    /** More sets than this are refused: counting them would take minutes. */
    static final int MOST = 1 << 20;

    private SurfaceSets() {}

    /** A set and its weight. */
    record Weighted(BitSet surfaces, BigInteger weight, long lowWeight) {
        static Weighted of(BitSet surfaces, BigInteger weight) {
            return new Weighted(surfaces, weight, weight.longValue());
        }
    }

    /**
     * The sets of weight other than 0.
     *
     * @param plan the surfaces, the strokes that limit how many can differ, and the rule
     * @throws IllegalArgumentException if there are more than {@value #MOST}
     */
    static List<Weighted> of(Plan plan) {
        int m = plan.surfaces.size();
        BitSet forced = forced(plan);
        int least = plan.limits.least();
        int most = plan.limits.most() >= Math.min(m, plan.played.size()) ? m : plan.limits.most();
        if (least <= Math.max(forced.cardinality(), Math.min(1, m)) && most == m) {
            BitSet all = new BitSet();
            all.set(0, m);
            return plan.played.isEmpty() && least > 0
                    ? List.of()
                    : List.of(Weighted.of(all, BigInteger.ONE));
        }
        List<BigInteger> weights = new ArrayList<>();
        BigInteger count = BigInteger.ZERO;
        int free = m - forced.cardinality();
        for (int size = 0; size <= m; size++) {
            BigInteger weight = weight(m, size, least, most);
            weights.add(weight);
            if (weight.signum() != 0 && size >= m - free) {
                count = count.add(binomial(free, size - (m - free)));
            }
        }
        if (count.compareTo(BigInteger.valueOf(MOST)) > 0) {
            throw new IllegalArgumentException(
                    "surfaces %d..%d of %d: %d sets of surfaces to look at, expected at most %d; choose fewer sounds or a narrower range"
                            .formatted(plan.limits.least(), plan.limits.most(), m, count, MOST));
        }
        return sets(m, forced, weights);
    }

    private static List<Weighted> sets(int m, BitSet forced, List<BigInteger> weights) {
        BitSet others = (BitSet) forced.clone();
        others.flip(0, m);
        int[] free = others.stream().toArray();
        List<Weighted> sets = new ArrayList<>();
        for (int size = m - free.length; size <= m; size++) {
            BigInteger weight = weights.get(size);
            if (weight.signum() != 0) {
                for (int[] chosen : Combinations.of(free.length, size - (m - free.length))) {
                    BitSet surfaces = (BitSet) forced.clone();
                    for (int index : chosen) {
                        surfaces.set(free[index]);
                    }
                    sets.add(Weighted.of(surfaces, weight));
                }
            }
        }
        return List.copyOf(sets);
    }

    /** Surfaces that every variation uses: some stroke has no other. */
    private static BitSet forced(Plan plan) {
        BitSet forced = new BitSet();
        for (Kind kind : plan.kinds) {
            if (kind.targets().length == 1) {
                forced.set(kind.targets()[0]);
            }
        }
        return forced;
    }

    private static BigInteger weight(int m, int size, int least, int most) {
        BigInteger weight = BigInteger.ZERO;
        for (int d = Math.max(least, size); d <= Math.min(most, m); d++) {
            BigInteger term = binomial(m - size, d - size);
            weight = (d - size) % 2 == 0 ? weight.add(term) : weight.subtract(term);
        }
        return weight;
    }

    private static BigInteger binomial(int n, int k) {
        BigInteger value = BigInteger.ONE;
        for (int i = 1; i <= k; i++) {
            value = value.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
        }
        return value;
    }
}
