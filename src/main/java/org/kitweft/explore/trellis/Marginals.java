package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

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
        addUp(family, bySurface);
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

    /** One chain within regions for each of its limbs. */
    private record Part(int chain, Bounds bounds) {}

    /** By regions: many sets of surfaces have them in common. */
    private static void addUp(Family family, BigInteger[][] bySurface) {
        Set<Part> parts = new LinkedHashSet<>();
        family.choices().forEach(choice -> parts.addAll(parts(family, choice)));
        List<Part> all = List.copyOf(parts);
        List<Map<Shape, Visits.Ways>> shapes = new ArrayList<>();
        family.chains.forEach(any -> shapes.add(new ConcurrentHashMap<>()));
        List<Visits> visits =
                family.sideBySide(
                        all.size(),
                        i -> {
                            Part part = all.get(i);
                            Ground ground = family.ground(part.chain);
                            Passage passage = new Passage(ground, part.bounds, family.narrow);
                            return new Visits(passage, shapes.get(part.chain));
                        });
        Map<Part, Visits> known = new HashMap<>();
        Map<Part, BigInteger> times = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            known.put(all.get(i), visits.get(i));
        }
        for (Regions.Weighted choice : family.choices()) {
            List<Part> mine = parts(family, choice);
            for (Part part : mine) {
                BigInteger others = choice.weight();
                for (Part other : mine) {
                    others =
                            other.chain == part.chain
                                    ? others
                                    : others.multiply(known.get(other).total());
                }
                times.merge(part, others, BigInteger::add);
            }
        }
        times.forEach((part, count) -> known.get(part).addTo(bySurface, count));
        if (family.narrow) {
            // What was added up from the lowest 64 bits alone is right in those.
            for (BigInteger[] row : bySurface) {
                Arrays.setAll(row, s -> BigInteger.valueOf(row[s].longValue()));
            }
        }
    }

    private static List<Part> parts(Family family, Regions.Weighted choice) {
        List<Part> parts = new ArrayList<>();
        for (int c = 0; c < family.chains.size(); c++) {
            parts.add(new Part(c, family.part(c, choice.bounds())));
        }
        return parts;
    }
}
