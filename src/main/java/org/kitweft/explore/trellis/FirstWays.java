package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.BitSet;
import java.util.List;

/** In a loop that counts different surfaces, the ways to go on before each limb has struck. */
interface FirstWays {
    /**
     * The ways, over all sounds of the surfaces still to come.
     *
     * @param places by limb where it stands; negative for nowhere yet
     * @param struck for each stroke so far its surface, no more than up to where each limb has
     *     struck
     * @param choices those choices of regions, by number, that hold what has been struck
     * @param ends by limb where it may strike last
     */
    BigInteger after(int[] places, List<Integer> struck, int[] choices, BitSet[] ends);
}
