package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.List;

/**
 * In a loop, the ways to play on and come back for each place where the limbs may have struck
 * first, added up over a family's sets of surfaces.
 */
final class Returns {
    private final Family family;
    private final List<RoundTrips>[][] trips;

    @SuppressWarnings("unchecked") // An array of generic lists cannot be made otherwise.
    Returns(Family family) {
        this.family = family;
        trips = new List[family.sets.size()][family.chains.size()];
        family.eachSet()
                .forEach(
                        s -> {
                            for (int c = 0; c < trips[s].length; c++) {
                                trips[s][c] = family.trips(s, c);
                            }
                        });
    }

    /**
     * The ways.
     *
     * @param places by limb where it has struck, each limb that strikes at all once
     */
    BigInteger from(int[] places) {
        BigInteger sum = BigInteger.ZERO;
        for (int s = 0; s < trips.length; s++) {
            BigInteger product = family.sets.get(s).weight();
            for (int c = 0; c < trips[s].length && product.signum() != 0; c++) {
                product = product.multiply(ways(trips[s][c], places));
            }
            sum = sum.add(product);
        }
        return sum;
    }

    private static BigInteger ways(List<RoundTrips> parts, int[] places) {
        for (RoundTrips part : parts) {
            BigInteger ways = part.ways(places);
            if (ways != null) {
                return ways;
            }
        }
        return BigInteger.ZERO;
    }
}
