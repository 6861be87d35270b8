package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * For each stroke and option the variations that take it: ways to get there times ways to go on.
 */
final class Marginals {
    private Marginals() {}

    /** For each stroke and option. */
    static BigInteger[][] of(Family family) {
        Plan plan = family.plan;
        BigInteger[][] bySurface = new BigInteger[plan.kinds.length][plan.surfaces.size()];
        for (BigInteger[] row : bySurface) {
            Arrays.fill(row, BigInteger.ZERO);
        }
        if (plan.limits.loop()) {
            comeBack(family, bySurface);
        } else {
            playOn(family, bySurface);
        }
        BigInteger[][] byOption = new BigInteger[plan.kinds.length][];
        for (int i = 0; i < byOption.length; i++) {
            byOption[i] = new BigInteger[plan.surfaceOf[i].length];
            for (int o = 0; o < byOption[i].length; o++) {
                int surface = plan.surfaceOf[i][o];
                // Sounds of one surface are equal to all rules, so they share its ways evenly.
                long alike = Arrays.stream(plan.surfaceOf[i]).filter(x -> x == surface).count();
                byOption[i][o] = bySurface[i][surface].divide(BigInteger.valueOf(alike));
            }
        }
        return byOption;
    }

    /** One chain within surfaces for each of its limbs. */
    private record Part(int chain, List<BitSet> surfaces) {}

    /** Loops, by regions: many sets of surfaces have them in common. */
    private static void comeBack(Family family, BigInteger[][] bySurface) {
        Plan plan = family.plan;
        Regions regions = new Regions(plan, Chain.joint(plan));
        Map<List<BitSet>, BigInteger> weights = regions.weigh(family.sets);
        Set<Part> parts = new LinkedHashSet<>();
        weights.keySet().forEach(choice -> parts.addAll(parts(family, regions, choice)));
        List<Part> all = List.copyOf(parts);
        List<Visits> visits = family.sideBySide(all.size(), i -> visits(family, all.get(i)));
        Map<Part, Visits> known = new HashMap<>();
        Map<Part, BigInteger> times = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            known.put(all.get(i), visits.get(i));
        }
        weights.forEach(
                (choice, weight) -> {
                    List<Part> mine = parts(family, regions, choice);
                    for (Part part : mine) {
                        BigInteger others = weight;
                        for (Part other : mine) {
                            others =
                                    other.chain == part.chain
                                            ? others
                                            : others.multiply(known.get(other).total());
                        }
                        times.merge(part, others, BigInteger::add);
                    }
                });
        times.forEach((part, count) -> add(family, part, known.get(part), count, bySurface));
        if (family.narrow) {
            // What was added up from the lowest 64 bits alone is right in those.
            for (BigInteger[] row : bySurface) {
                Arrays.setAll(row, s -> BigInteger.valueOf(row[s].longValue()));
            }
        }
    }

    private static List<Part> parts(Family family, Regions regions, List<BitSet> choice) {
        List<Part> parts = new ArrayList<>();
        for (int c = 0; c < family.chains.size(); c++) {
            parts.add(new Part(c, regions.part(choice, family.chains.get(c))));
        }
        return parts;
    }

    private static Visits visits(Family family, Part part) {
        Chain chain = family.chains.get(part.chain);
        return new Visits(
                family.plan, new Layout(family.plan, chain, part.surfaces), family.narrow);
    }

    private static void add(
            Family family, Part part, Visits visits, BigInteger count, BigInteger[][] bySurface) {
        if (count.signum() == 0) {
            return;
        }
        int[] strokes = family.chains.get(part.chain).strokes;
        for (int j = 0; j < strokes.length; j++) {
            BigInteger[] row = bySurface[strokes[j]];
            for (int surface = 0; surface < row.length; surface++) {
                BigInteger ways = visits.get(j, surface);
                if (ways.signum() != 0) {
                    row[surface] = row[surface].add(ways.multiply(count));
                }
            }
        }
    }

    private static void playOn(Family family, BigInteger[][] bySurface) {
        for (int s = 0; s < family.sets.size(); s++) {
            for (int c = 0; c < family.chains.size(); c++) {
                BigInteger others = family.sets.get(s).weight();
                for (int other = 0; other < family.chains.size(); other++) {
                    others = other == c ? others : others.multiply(family.total(s, other));
                }
                if (others.signum() != 0) {
                    add(family, family.whole(s, c), others, bySurface);
                }
            }
        }
    }

    private static void add(
            Family family, Table back, BigInteger others, BigInteger[][] bySurface) {
        Layout layout = back.layout;
        Wide[] forth = back.forth();
        int[] strokes = layout.chain.strokes;
        for (int j = 0; j < strokes.length; j++) {
            int moved = layout.chain.dimension(layout.chain.kinds[j].limbs()[0]);
            Wide before = forth[j + 1];
            Wide after = back.layer(j + 1);
            for (int place = layout.base; place < layout.sizes[moved]; place++) {
                int surface = layout.surfaces[moved][place - layout.base];
                BigInteger ways = BigInteger.ZERO;
                long low = 0;
                for (int state = 0; state < layout.states; state++) {
                    if (layout.place(state, moved) != place) {
                        continue;
                    }
                    if (family.narrow) {
                        low += before.low(state) * after.low(state);
                    } else if (!before.isZero(state) && !after.isZero(state)) {
                        ways = ways.add(before.get(state).multiply(after.get(state)));
                    }
                }
                BigInteger here = family.narrow ? BigInteger.valueOf(low) : ways;
                if (here.signum() != 0) {
                    BigInteger[] row = bySurface[strokes[j]];
                    row[surface] = row[surface].add(here.multiply(others));
                }
            }
        }
    }
}
