package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;

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
        for (int s = 0; s < family.sets.size(); s++) {
            for (int c = 0; c < family.chains.size(); c++) {
                BigInteger others = family.sets.get(s).weight();
                for (int other = 0; other < family.chains.size(); other++) {
                    others = other == c ? others : others.multiply(family.total(s, other));
                }
                if (others.signum() != 0) {
                    add(family, s, c, others, bySurface);
                }
            }
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

    private static void add(
            Family family, int set, int chain, BigInteger others, BigInteger[][] bySurface) {
        Table back = family.whole(set, chain);
        Layout layout = back.layout;
        Wide[] forth = back.forth();
        int[] strokes = layout.chain.strokes;
        for (int j = 0; j < strokes.length; j++) {
            int moved = layout.chain.dimension(layout.chain.kinds[j].limbs()[0]);
            Wide before = forth[j + 1];
            Wide after = back.layer(j + 1);
            for (int state = 0; state < layout.states; state++) {
                int surface = layout.surface(state, moved);
                BigInteger ways = BigInteger.ZERO;
                for (int c = 0; surface >= 0 && c < back.columns; c++) {
                    int index = state * back.columns + c;
                    if (!before.isZero(index) && !after.isZero(index)) {
                        ways = ways.add(before.get(index).multiply(after.get(index)));
                    }
                }
                if (ways.signum() != 0) {
                    BigInteger[] row = bySurface[strokes[j]];
                    row[surface] = row[surface].add(ways.multiply(others));
                }
            }
        }
    }
}
