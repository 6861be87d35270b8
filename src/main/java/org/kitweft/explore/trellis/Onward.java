package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * In a loop in which a limb strikes again before all have struck, the ways to go on from there: for
 * regions of all limbs, those from each state to each end, added up over a family's sets of
 * surfaces. What has been struck and where the limbs may end picks among them.
 */
final class Onward implements FirstWays {
    private final Family family;
    private final Chain joint;
    private final List<List<BitSet>> regions;
    private final List<BigInteger> weights;

    /** For each choice of regions and each chain. */
    private final List<List<Part>> parts;

    /** One chain within its regions. */
    private static final class Part {
        private final Layout layout;
        private final int[] ends;
        private final Passage passage;
        private final Wide ways;

        Part(Layout layout, int from, boolean narrow) {
            this.layout = layout;
            ends = layout.endStates();
            passage = new Passage(layout, narrow);
            Kind[] kinds = layout.chain.kinds;
            ways = passage.between(kinds, from, kinds.length, ends);
        }

        BigInteger after(int[] places, BitSet[] allowed, boolean narrow) {
            int[] limbs = layout.chain.limbs;
            BitSet[] mine = new BitSet[limbs.length];
            int state = 0;
            for (int d = 0; d < limbs.length; d++) {
                mine[d] = allowed[limbs[d]];
                state += layout.places[d][places[limbs[d]]] * layout.strides[d];
            }
            long low = 0;
            BigInteger big = BigInteger.ZERO;
            for (int c = 0; c < ends.length; c++) {
                if (layout.endsIn(ends[c], mine)) {
                    int at = passage.row(state) * ends.length + c;
                    low += narrow ? ways.low(at) : 0;
                    big = narrow ? big : big.add(ways.get(at));
                }
            }
            return narrow ? BigInteger.valueOf(low) : big;
        }
    }

    /**
     * Counts.
     *
     * @param joint all limbs of the family's plan
     */
    Onward(Family family, Chain joint) {
        this.family = family;
        this.joint = joint;
        Regions all = new Regions(family.plan, joint);
        Map<List<BitSet>, BigInteger> weighed = all.weigh(family.sets);
        regions = List.copyOf(weighed.keySet());
        weights = List.copyOf(weighed.values());
        List<Map<List<BitSet>, Part>> known = new ArrayList<>();
        family.chains.forEach(any -> known.add(new ConcurrentHashMap<>()));
        parts =
                family.sideBySide(
                        regions.size(),
                        i ->
                                IntStream.range(0, known.size())
                                        .mapToObj(c -> part(c, all, regions.get(i), known.get(c)))
                                        .toList());
    }

    private Part part(int c, Regions all, List<BitSet> choice, Map<List<BitSet>, Part> known) {
        Chain chain = family.chains.get(c);
        int played = 0;
        while (played < chain.strokes.length && chain.strokes[played] < joint.head) {
            played++;
        }
        int from = played;
        return known.computeIfAbsent(
                all.part(choice, chain),
                mine -> new Part(new Layout(family.plan, chain, mine), from, family.narrow));
    }

    @Override
    public BigInteger after(int[] places, List<Integer> struck, BitSet[] ends) {
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < parts.size(); i++) {
            if (holds(regions.get(i), struck)) {
                BigInteger product = weights.get(i);
                for (Part part : parts.get(i)) {
                    product = product.multiply(part.after(places, ends, family.narrow));
                }
                sum = sum.add(product);
            }
        }
        return sum;
    }

    /** Whether each limb has struck in its region only. */
    private boolean holds(List<BitSet> choice, List<Integer> struck) {
        for (int j = 0; j < struck.size(); j++) {
            for (int limb : joint.kinds[j].limbs()) {
                if (!choice.get(joint.dimension(limb)).get(struck.get(j))) {
                    return false;
                }
            }
        }
        return true;
    }
}
