package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * In a loop in which a limb strikes again before all have struck, the ways to go on from there: for
 * regions of all limbs, those from each state to each end, added up over a family's sets of
 * surfaces. What has been struck and where the limbs may end picks among them. Not safe for use by
 * several threads.
 */
final class Onward implements FirstWays {
    private final Family family;
    private final Chain joint;

    /** For each limb of the joint chain and each surface the choices of regions that hold it. */
    private final BitSet[][] holding;

    private final BigInteger[] weights;

    /** The same, the lowest 64 bits. */
    private final long[] lowWeights;

    /** For each choice of regions and each chain. */
    private final List<List<Part>> parts;

    private final Map<Asked, BigInteger> known = new HashMap<>();

    /** What the ways depend on: long beginnings have much of it in common. */
    private static final class Asked {
        private final int[] places;
        private final BitSet held;
        private final long[] allowed;

        Asked(int[] places, BitSet held, long[] allowed) {
            this.places = places;
            this.held = held;
            this.allowed = allowed;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Asked asked
                    && Arrays.equals(places, asked.places)
                    && held.equals(asked.held)
                    && Arrays.equals(allowed, asked.allowed);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * Arrays.hashCode(places) + held.hashCode()) + Arrays.hashCode(allowed);
        }
    }

    /** One chain within its regions. */
    private static final class Part {
        private final Layout layout;
        private final int[] ends;
        private final Passage passage;
        private final Wide ways;

        /** For each limb and end the surface where it strikes last. */
        private final int[][] last;

        Part(Layout layout, int from, boolean narrow) {
            this.layout = layout;
            ends = layout.endStates();
            passage = new Passage(layout, narrow);
            Kind[] kinds = layout.chain.kinds;
            ways = passage.between(kinds, from, kinds.length, ends);
            last = new int[layout.sizes.length][ends.length];
            for (int d = 0; d < last.length; d++) {
                for (int end = 0; end < ends.length; end++) {
                    last[d][end] = layout.surface(ends[end], d);
                }
            }
        }

        /** Where the ways from a state of all limbs stand. */
        private int at(int[] places) {
            int state = 0;
            for (int d = 0; d < last.length; d++) {
                state += layout.places[d][places[layout.chain.limbs[d]]] * layout.strides[d];
            }
            return passage.row(state) * ends.length;
        }

        private boolean fits(int end, long[] allowed) {
            for (int d = 0; d < last.length; d++) {
                if ((allowed[layout.chain.limbs[d]] >>> last[d][end] & 1) == 0) {
                    return false;
                }
            }
            return true;
        }

        /** Narrow: one digit holds all 64 bits. */
        long low(int[] places, long[] allowed) {
            int at = at(places);
            long[] mine = ways.digits[0];
            long sum = 0;
            for (int end = 0; end < ends.length; end++) {
                sum += fits(end, allowed) ? mine[at + end] : 0;
            }
            return sum;
        }

        BigInteger big(int[] places, long[] allowed) {
            int at = at(places);
            BigInteger sum = BigInteger.ZERO;
            for (int end = 0; end < ends.length; end++) {
                sum = fits(end, allowed) ? sum.add(ways.get(at + end)) : sum;
            }
            return sum;
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
        List<List<BitSet>> choices = List.copyOf(weighed.keySet());
        weights = weighed.values().toArray(BigInteger[]::new);
        lowWeights = Arrays.stream(weights).mapToLong(BigInteger::longValue).toArray();
        holding = new BitSet[joint.limbs.length][family.plan.surfaces.size()];
        for (BitSet[] mine : holding) {
            Arrays.setAll(mine, any -> new BitSet(choices.size()));
        }
        for (int i = 0; i < choices.size(); i++) {
            for (int d = 0; d < holding.length; d++) {
                for (int surface : choices.get(i).get(d).stream().toArray()) {
                    holding[d][surface].set(i);
                }
            }
        }
        List<Map<List<BitSet>, Part>> made = new ArrayList<>();
        family.chains.forEach(any -> made.add(new ConcurrentHashMap<>()));
        parts =
                family.sideBySide(
                        choices.size(),
                        i ->
                                IntStream.range(0, made.size())
                                        .mapToObj(c -> part(c, all, choices.get(i), made.get(c)))
                                        .toList());
    }

    private Part part(int c, Regions all, List<BitSet> choice, Map<List<BitSet>, Part> made) {
        Chain chain = family.chains.get(c);
        int played = 0;
        while (played < chain.strokes.length && chain.strokes[played] < joint.head) {
            played++;
        }
        int from = played;
        return made.computeIfAbsent(
                all.part(choice, chain),
                mine -> new Part(new Layout(family.plan, chain, mine), from, family.narrow));
    }

    /** A set of surfaces, of which there are no more than {@link SurfaceUse#MOST_SURFACES}. */
    private static long bits(BitSet surfaces) {
        return surfaces.isEmpty() ? 0 : surfaces.toLongArray()[0];
    }

    @Override
    public BigInteger after(int[] places, List<Integer> struck, BitSet[] ends) {
        long[] allowed = new long[ends.length];
        for (int limb : joint.limbs) {
            allowed[limb] = bits(ends[limb]);
        }
        return known.computeIfAbsent(new Asked(places, held(struck), allowed), any -> after(any));
    }

    private BigInteger after(Asked asked) {
        int[] places = asked.places;
        long[] allowed = asked.allowed;
        BitSet held = asked.held;
        long low = 0;
        BigInteger big = BigInteger.ZERO;
        for (int i = held.nextSetBit(0); i >= 0; i = held.nextSetBit(i + 1)) {
            if (family.narrow) {
                long product = lowWeights[i];
                for (Part part : parts.get(i)) {
                    product *= part.low(places, allowed);
                }
                low += product;
            } else {
                BigInteger product = weights[i];
                for (Part part : parts.get(i)) {
                    product = product.multiply(part.big(places, allowed));
                }
                big = big.add(product);
            }
        }
        return family.narrow ? BigInteger.valueOf(low) : big;
    }

    /** The choices of regions in which each limb has struck in its region only. */
    private BitSet held(List<Integer> struck) {
        BitSet held = new BitSet(weights.length);
        held.set(0, weights.length);
        for (int j = 0; j < struck.size(); j++) {
            for (int limb : joint.kinds[j].limbs()) {
                held.and(holding[joint.dimension(limb)][struck.get(j)]);
            }
        }
        return held;
    }
}
