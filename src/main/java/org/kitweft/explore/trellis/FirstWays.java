package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.BitSet;
import java.util.List;

/** In a loop that counts different surfaces, the ways to go on once each limb has struck. */
interface FirstWays {
    /**
     * The ways, over all sounds of the surfaces still to come.
     *
     * @param places by limb where it stands
     * @param struck for each stroke so far its surface
     * @param ends by limb where it may strike last
     */
    BigInteger after(int[] places, List<Integer> struck, BitSet[] ends);
}
