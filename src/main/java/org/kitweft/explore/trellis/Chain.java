package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.kitweft.kit.Limb;

/**
 * Limbs that a rule ties together, and their strokes. What one chain does leaves another free, so
 * that their counts multiply. Hands are tied by the crossing rule, any two limbs by a stroke that
 * both play.
 */
final class Chain {
    /** Feet first, then right hand before left: the order that {@link Layout} builds on. */
    private static final Limb[] ORDER = {
        Limb.RIGHT_FOOT, Limb.LEFT_FOOT, Limb.RIGHT_HAND, Limb.LEFT_HAND
    };

    private static final int RIGHT_HAND = Limb.RIGHT_HAND.ordinal();
    private static final int LEFT_HAND = Limb.LEFT_HAND.ordinal();

    /** Ordinals of its limbs. */
    final int[] limbs;

    /** Its strokes, by number among all that are played. */
    final int[] strokes;

    /** For each of its strokes the kind. */
    final Kind[] kinds;

    /** After how many of its strokes each of its limbs has struck. */
    final int head;

    /** For each of its limbs the surfaces it may strike. */
    final BitSet[] reach;

    /** For each of its limbs the surfaces where it may end. */
    final BitSet[] ends;

    /** The surfaces it may strike. */
    final BitSet surfaces;

    /** Whether both hands are in it and must not cross. */
    final boolean crossing;

    private Chain(Plan plan, List<Integer> members) {
        limbs = Arrays.stream(ORDER).mapToInt(Limb::ordinal).filter(members::contains).toArray();
        List<Integer> mine = new ArrayList<>();
        for (int i = 0; i < plan.kinds.length; i++) {
            if (members.contains(plan.kinds[i].limbs()[0])) {
                mine.add(i);
            }
        }
        strokes = mine.stream().mapToInt(Integer::intValue).toArray();
        kinds = Arrays.stream(strokes).mapToObj(i -> plan.kinds[i]).toArray(Kind[]::new);
        crossing =
                plan.limits.crossing()
                        && members.contains(RIGHT_HAND)
                        && members.contains(LEFT_HAND);
        reach = new BitSet[limbs.length];
        ends = new BitSet[limbs.length];
        surfaces = new BitSet();
        int latest = 0;
        for (int d = 0; d < limbs.length; d++) {
            reach[d] = new BitSet();
            ends[d] = new BitSet();
            boolean struck = false;
            for (int j = 0; j < kinds.length; j++) {
                if (plays(kinds[j], limbs[d])) {
                    BitSet targets = new BitSet();
                    Arrays.stream(kinds[j].targets()).forEach(targets::set);
                    reach[d].or(targets);
                    ends[d] = targets;
                    latest = struck ? latest : Math.max(latest, j + 1);
                    struck = true;
                }
            }
            surfaces.or(reach[d]);
        }
        head = latest;
    }

    /** In a loop, for each limb the surfaces where it may stand before a stroke of the chain. */
    BitSet[] before(int stroke) {
        BitSet[] all = new BitSet[limbs.length];
        for (int d = 0; d < limbs.length; d++) {
            int j = stroke;
            do {
                j = Math.floorMod(j - 1, kinds.length);
            } while (!plays(kinds[j], limbs[d]));
            all[d] = new BitSet();
            for (int target : kinds[j].targets()) {
                all[d].set(target);
            }
        }
        return all;
    }

    /** For each limb its first stroke among all, and its place among that stroke's limbs. */
    int[][] firsts() {
        int[][] first = new int[limbs.length][];
        for (int j = kinds.length - 1; j >= 0; j--) {
            int[] striking = kinds[j].limbs();
            for (int slot = 0; slot < striking.length; slot++) {
                first[dimension(striking[slot])] = new int[] {strokes[j], slot};
            }
        }
        return first;
    }

    private static boolean plays(Kind kind, int limb) {
        for (int each : kind.limbs()) {
            if (each == limb) {
                return true;
            }
        }
        return false;
    }

    /** The chains of a plan, those with an earlier first stroke first. */
    static List<Chain> of(Plan plan) {
        int[] group = {0, 1, 2, 3};
        boolean[] striking = new boolean[group.length];
        for (Kind kind : plan.kinds) {
            for (int limb : kind.limbs()) {
                striking[limb] = true;
                join(group, kind.limbs()[0], limb);
            }
        }
        if (plan.limits.crossing() && striking[RIGHT_HAND] && striking[LEFT_HAND]) {
            join(group, RIGHT_HAND, LEFT_HAND);
        }
        List<Chain> chains = new ArrayList<>();
        for (int g = 0; g < group.length; g++) {
            List<Integer> members = new ArrayList<>();
            for (int limb = 0; limb < group.length; limb++) {
                if (group[limb] == g && striking[limb]) {
                    members.add(limb);
                }
            }
            if (!members.isEmpty()) {
                chains.add(new Chain(plan, members));
            }
        }
        chains.sort((a, b) -> Integer.compare(a.strokes[0], b.strokes[0]));
        return List.copyOf(chains);
    }

    /** All limbs that strike taken as one chain, whether or not a rule ties them. */
    static Chain joint(Plan plan) {
        List<Integer> members = new ArrayList<>();
        of(plan).forEach(chain -> Arrays.stream(chain.limbs).forEach(members::add));
        return new Chain(plan, members);
    }

    private static void join(int[] group, int one, int other) {
        int from = group[other];
        int to = group[one];
        for (int limb = 0; limb < group.length; limb++) {
            group[limb] = group[limb] == from ? to : group[limb];
        }
    }

    /** The place of a limb among the chain's limbs. */
    int dimension(int limb) {
        for (int d = 0; d < limbs.length; d++) {
            if (limbs[d] == limb) {
                return d;
            }
        }
        throw new IllegalArgumentException(
                "limb %d is not in this chain, expected one of %s"
                        .formatted(limb, Arrays.toString(limbs)));
    }
}
