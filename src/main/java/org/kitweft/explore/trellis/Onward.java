package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * In a loop in which a limb strikes again before all have struck, the ways to go on: within each of
 * a family's choices of regions, those from where the limbs stand to each end, added up. A limb
 * that has not struck yet stands where it will end.
 */
final class Onward implements FirstWays {
    private final Family family;

    /** For each choice of regions and each chain. */
    private final List<List<Part>> parts;

    /** One chain within its regions. */
    private static final class Part {
        private final Passage passage;
        private final int[] ends;

        /** For each of its limbs and end the surface where it strikes last. */
        private final int[][] last;

        /** For each of its strokes until all limbs of all chains have struck, the ways on. */
        private final @Nullable Wide[] layers;

        Part(Passage passage, Map<Shape, @Nullable Wide[]> known, int from, int head) {
            this.passage = passage;
            ends = passage.rowsIn(passage.ground.chain.ends);
            last = new int[passage.ground.chain.limbs.length][ends.length];
            for (int d = 0; d < last.length; d++) {
                for (int end = 0; end < ends.length; end++) {
                    last[d][end] = passage.surface(ends[end], d);
                }
            }
            layers =
                    known.computeIfAbsent(
                            passage.shape(ends),
                            any ->
                                    passage.back(
                                            passage.standing(ends), ends.length, from, head + 1));
        }

        /** What the limbs that have struck add to the code of their state. */
        private int code(int[] places) {
            int code = 0;
            for (int d = 0; d < last.length; d++) {
                int at = places[passage.ground.chain.limbs[d]];
                code += at < 0 ? 0 : passage.ground.code(d, at);
            }
            return code;
        }

        /**
         * Where the ways to an end stand; negative if it does not fit.
         *
         * @param struck the code of the limbs that have struck
         */
        private int at(int struck, int[] places, int end, BitSet[] allowed) {
            Ground ground = passage.ground;
            int code = struck;
            for (int d = 0; d < last.length; d++) {
                int limb = ground.chain.limbs[d];
                if (!allowed[limb].get(last[d][end])) {
                    return Ground.NONE;
                }
                code += places[limb] < 0 ? ground.code(d, last[d][end]) : 0;
            }
            int state = ground.state(code);
            int row = state == Ground.NONE ? Ground.NONE : passage.row(state);
            return row < 0 ? Ground.NONE : row * ends.length + end;
        }

        private Wide layer(int played) {
            return Objects.requireNonNull(layers[played]);
        }

        /** Narrow: one digit holds all 64 bits. */
        long low(int played, int[] places, BitSet[] allowed) {
            long[] ways = layer(played).digits[0];
            int struck = code(places);
            long sum = 0;
            for (int end = 0; end < ends.length; end++) {
                int at = at(struck, places, end, allowed);
                sum += at < 0 ? 0 : ways[at];
            }
            return sum;
        }

        BigInteger big(int played, int[] places, BitSet[] allowed) {
            int struck = code(places);
            BigInteger sum = BigInteger.ZERO;
            for (int end = 0; end < ends.length; end++) {
                int at = at(struck, places, end, allowed);
                sum = at < 0 ? sum : sum.add(layer(played).get(at));
            }
            return sum;
        }
    }

    Onward(Family family) {
        this.family = family;
        List<Map<Bounds, Part>> made = new ArrayList<>();
        List<Map<Shape, @Nullable Wide[]>> known = new ArrayList<>();
        for (Chain ignored : family.chains) {
            made.add(new ConcurrentHashMap<>());
            known.add(new ConcurrentHashMap<>());
        }
        parts =
                family.sideBySide(
                        family.choices().size(),
                        i ->
                                IntStream.range(0, made.size())
                                        .mapToObj(c -> part(c, i, made.get(c), known.get(c)))
                                        .toList());
    }

    private Part part(
            int c, int choice, Map<Bounds, Part> made, Map<Shape, @Nullable Wide[]> known) {
        // One chain alone is asked once it has struck; of several one may strike before another.
        int from = family.chains.size() == 1 ? 1 : 0;
        return made.computeIfAbsent(
                family.part(c, family.choices().get(choice).bounds()),
                any -> new Part(family.passage(c, choice), known, from, head(family, c)));
    }

    /** How many strokes of a chain are played until each limb of all has struck. */
    private static int head(Family family, int c) {
        int head = 0;
        for (int j = 0; j < family.joint.head; j++) {
            head += family.chainOf[j] == c ? 1 : 0;
        }
        return head;
    }

    /** Bytes that the ways would take, at most. */
    static double bytes(Family family) {
        double[] heads = new double[family.chains.size()];
        Arrays.setAll(heads, c -> (head(family, c) + 1.0) / (family.plan.kinds.length + 1));
        double bytes = 0;
        for (Regions.Weighted choice : family.choices()) {
            for (int c = 0; c < family.chains.size(); c++) {
                Chain chain = family.chains.get(c);
                Bounds mine = family.part(c, choice.bounds());
                double rows = 1;
                for (int d = 0; d < chain.limbs.length; d++) {
                    rows *= mine.size(d);
                }
                bytes += Blend.bytes(family.plan, rows * rows, family.narrow) * heads[c];
            }
        }
        return bytes;
    }

    @Override
    public BigInteger after(int[] places, List<Integer> struck, int[] choices, BitSet[] ends) {
        int[] played = new int[family.chains.size()];
        for (int j = 0; j < struck.size(); j++) {
            played[family.chainOf[j]]++;
        }
        long low = 0;
        BigInteger big = BigInteger.ZERO;
        for (int i : choices) {
            BigInteger weight = family.choices().get(i).weight();
            if (family.narrow) {
                long product = weight.longValue();
                for (int c = 0; c < played.length; c++) {
                    product *= parts.get(i).get(c).low(played[c], places, ends);
                }
                low += product;
            } else {
                BigInteger product = weight;
                for (int c = 0; c < played.length; c++) {
                    product = product.multiply(parts.get(i).get(c).big(played[c], places, ends));
                }
                big = big.add(product);
            }
        }
        return family.narrow ? BigInteger.valueOf(low) : big;
    }
}
