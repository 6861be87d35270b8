package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * In a loop, the ways to play on and come back for each place where the limbs may have struck
 * first, added up over a family's sets of surfaces. Many sets have regions in common: their weights
 * are added up first, and what comes to 0 is not played.
 */
final class Returns implements FirstWays {
    private final Family family;
    private final Chain joint;

    /** For each place of the limbs, narrow. */
    private final long[] low;

    /** The same, wide. */
    private final BigInteger[] big;

    /**
     * Counts.
     *
     * @param joint all limbs of the family's plan
     */
    Returns(Family family, Chain joint) {
        this.family = family;
        this.joint = joint;
        int places = 1;
        for (BitSet reach : joint.reach) {
            places = Math.multiplyExact(places, reach.length());
        }
        low = new long[family.narrow ? places : 0];
        big = new BigInteger[family.narrow ? 0 : places];
        Arrays.fill(big, BigInteger.ZERO);
        Regions regions = new Regions(family.plan, joint);
        Map<List<BitSet>, BigInteger> weights = regions.weigh(family.sets);
        List<List<BitSet>> all = new ArrayList<>(weights.keySet());
        List<List<RoundTrips>> trips =
                family.sideBySide(
                        all.size(),
                        i ->
                                IntStream.range(0, family.chains.size())
                                        .mapToObj(c -> trips(c, regions, all.get(i)))
                                        .toList());
        for (int i = 0; i < all.size(); i++) {
            BigInteger weight = weights.get(all.get(i));
            if (family.narrow) {
                addLow(trips.get(i), 0, 0, weight.longValue());
            } else {
                addBig(trips.get(i), 0, 0, weight);
            }
        }
    }

    private RoundTrips trips(int chain, Regions regions, List<BitSet> choice) {
        return family.trips(chain, regions.part(choice, family.chains.get(chain)));
    }

    private void addLow(List<RoundTrips> trips, int chain, int place, long product) {
        if (chain == trips.size()) {
            low[place] += product;
            return;
        }
        RoundTrips mine = trips.get(chain);
        for (int start = 0; start < mine.size(); start++) {
            if (mine.low(start) != 0) {
                addLow(trips, chain + 1, place(place, mine, start), product * mine.low(start));
            }
        }
    }

    private void addBig(List<RoundTrips> trips, int chain, int place, BigInteger product) {
        if (chain == trips.size()) {
            big[place] = big[place].add(product);
            return;
        }
        RoundTrips mine = trips.get(chain);
        for (int start = 0; start < mine.size(); start++) {
            BigInteger ways = mine.big(start);
            if (ways.signum() != 0) {
                addBig(trips, chain + 1, place(place, mine, start), product.multiply(ways));
            }
        }
    }

    /** Adds the places of one chain's limbs to a place of all. */
    private int place(int place, RoundTrips trips, int start) {
        int sum = place;
        int[] limbs = trips.layout.chain.limbs;
        for (int d = 0; d < limbs.length; d++) {
            sum += trips.surface(start, d) * stride(joint.dimension(limbs[d]));
        }
        return sum;
    }

    private int stride(int d) {
        int stride = 1;
        for (int other = d + 1; other < joint.reach.length; other++) {
            stride *= joint.reach[other].length();
        }
        return stride;
    }

    @Override
    public BigInteger after(int[] places, List<Integer> struck, BitSet[] ends) {
        int place = 0;
        for (int d = 0; d < joint.limbs.length; d++) {
            place += places[joint.limbs[d]] * stride(d);
        }
        BigInteger ways = family.narrow ? BigInteger.valueOf(low[place]) : big[place];
        // Who comes back strikes the first surfaces again, with any of their sounds.
        return ways.divide(sounds(struck));
    }

    private BigInteger sounds(List<Integer> struck) {
        BigInteger sounds = BigInteger.ONE;
        for (int j = 0; j < struck.size(); j++) {
            Kind kind = joint.kinds[j];
            int target = Arrays.binarySearch(kind.targets(), struck.get(j));
            sounds = sounds.multiply(BigInteger.valueOf(kind.sounds()[target]));
        }
        return sounds;
    }
}
