package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * In a loop in which no limb strikes twice before all have struck, the ways to play on and come
 * back for each place where the limbs may have struck first, added up over a family's choices of
 * regions.
 */
final class Returns implements FirstWays {
    private final Family family;
    private final Chain joint;

    /** For each limb of all how far its places are apart. */
    private final int[] strides;

    /** For each chain and limb of it the same. */
    private final int[][] stridesOf;

    /** For each place of the limbs, narrow. */
    private final long[] low;

    /** The same, wide. */
    private final BigInteger[] big;

    Returns(Family family) {
        this.family = family;
        joint = family.joint;
        int places = 1;
        strides = new int[joint.limbs.length];
        for (int d = strides.length - 1; d >= 0; d--) {
            strides[d] = places;
            places = Math.multiplyExact(places, joint.reach[d].length());
        }
        stridesOf = new int[family.chains.size()][];
        for (int c = 0; c < stridesOf.length; c++) {
            int[] limbs = family.chains.get(c).limbs;
            stridesOf[c] = IntStream.of(limbs).map(l -> strides[joint.dimension(l)]).toArray();
        }
        low = new long[family.narrow ? places : 0];
        big = new BigInteger[family.narrow ? 0 : places];
        Arrays.fill(big, BigInteger.ZERO);
        List<Regions.Weighted> all = family.choices();
        List<List<RoundTrips>> trips =
                family.sideBySide(
                        all.size(),
                        i ->
                                IntStream.range(0, family.chains.size())
                                        .mapToObj(c -> family.trips(c, family.passage(c, i)))
                                        .toList());
        for (int i = 0; i < all.size(); i++) {
            BigInteger weight = all.get(i).weight();
            if (family.narrow) {
                addLow(trips.get(i), 0, 0, weight.longValue());
            } else {
                addBig(trips.get(i), 0, 0, weight);
            }
        }
    }

    private void addLow(List<RoundTrips> trips, int chain, int place, long product) {
        if (chain == trips.size()) {
            low[place] += product;
            return;
        }
        RoundTrips mine = trips.get(chain);
        for (int start = 0; start < mine.size(); start++) {
            if (mine.low(start) != 0) {
                int more = place(place, chain, mine, start);
                addLow(trips, chain + 1, more, product * mine.low(start));
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
                int more = place(place, chain, mine, start);
                addBig(trips, chain + 1, more, product.multiply(ways));
            }
        }
    }

    /** Adds the places of one chain's limbs to a place of all. */
    private int place(int place, int chain, RoundTrips trips, int start) {
        int sum = place;
        for (int d = 0; d < stridesOf[chain].length; d++) {
            sum += trips.surface(start, d) * stridesOf[chain][d];
        }
        return sum;
    }

    @Override
    public BigInteger after(int[] places, List<Integer> struck, int[] choices, BitSet[] ends) {
        // Who comes back strikes the first surfaces again, with any of their sounds.
        return sum(places, 0, 0).divide(sounds(struck));
    }

    /** Adds up over all places of the limbs that stand nowhere yet. */
    private BigInteger sum(int[] places, int d, int place) {
        if (d == joint.limbs.length) {
            return family.narrow ? BigInteger.valueOf(low[place]) : big[place];
        }
        int at = places[joint.limbs[d]];
        if (at >= 0) {
            return sum(places, d + 1, place + at * strides[d]);
        }
        BigInteger sum = BigInteger.ZERO;
        for (int surface = 0; surface < joint.reach[d].length(); surface++) {
            sum = sum.add(sum(places, d + 1, place + surface * strides[d]));
        }
        return sum;
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
