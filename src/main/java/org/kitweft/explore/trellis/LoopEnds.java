package org.kitweft.explore.trellis;

import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;
import org.kitweft.kit.Limb;

/** What a loop's beginning asks of its end: by limb the surfaces where it may strike last. */
final class LoopEnds {
    private LoopEnds() {}

    /** Before the first stroke: wherever the last strokes of the limbs may sound. */
    static BitSet[] any(List<Chain> chains) {
        BitSet[] ends = new BitSet[Limb.values().length];
        for (Chain chain : chains) {
            for (int d = 0; d < chain.limbs.length; d++) {
                ends[chain.limbs[d]] = chain.ends[d];
            }
        }
        return ends;
    }

    /**
     * What is left of the ends when one more stroke has been played.
     *
     * @param places by limb where it stood before the stroke; negative for nowhere yet
     */
    static BitSet[] after(Plan plan, BitSet[] ends, Kind kind, int[] places, int surface) {
        BitSet[] next = ends.clone();
        for (int slot = 0; slot < kind.limbs().length; slot++) {
            int limb = kind.limbs()[slot];
            if (places[limb] < 0) {
                Kind.Moves moves = kind.moves().get(slot);
                next[limb] = only(next[limb], end -> moves.allows(end, surface));
            }
            Limb hand = Limb.values()[limb];
            int other = hand.opposite().ordinal();
            boolean together = kind.limbs().length > 1 && kind.limbs()[1 - slot] == other;
            if (hand.isHand() && places[other] < 0 && !together && next[other] != null) {
                next[other] =
                        only(
                                next[other],
                                end ->
                                        hand == Limb.RIGHT_HAND
                                                ? plan.uncrossed(surface, end)
                                                : plan.uncrossed(end, surface));
            }
        }
        return next;
    }

    private static BitSet only(BitSet set, IntPredicate fits) {
        BitSet kept = new BitSet();
        set.stream().filter(fits).forEach(kept::set);
        return kept;
    }
}
