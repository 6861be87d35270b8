package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The regions into which a set of surfaces falls for each limb of a chain: no move leads out of a
 * region, so that the ways to play within the set are those within one region for each limb, added
 * up. Regions are smaller than the set, and many sets have the same ones.
 */
final class Regions {
    private final Chain chain;

    /** For each limb and surface, those that a move joins to it either way. */
    private final BitSet[][] near;

    Regions(Plan plan, Chain chain) {
        this.chain = chain;
        int m = plan.surfaces.size();
        near = new BitSet[chain.limbs.length][m];
        for (BitSet[] all : near) {
            for (int s = 0; s < m; s++) {
                all[s] = new BitSet(m);
            }
        }
        for (Kind kind : List.of(chain.kinds).stream().distinct().toList()) {
            for (int slot = 0; slot < kind.limbs().length; slot++) {
                int d = chain.dimension(kind.limbs()[slot]);
                for (int to : kind.targets()) {
                    for (int from = 0; from < m; from++) {
                        if (kind.moves().get(slot).allows(from, to)) {
                            near[d][from].set(to);
                            near[d][to].set(from);
                        }
                    }
                }
            }
        }
    }

    /** All choices of one region for each limb of the chain; none if a limb finds no surface. */
    List<List<BitSet>> of(BitSet set) {
        List<List<BitSet>> choices = List.of(List.of());
        for (int d = 0; d < chain.limbs.length; d++) {
            List<BitSet> mine = regions(d, set);
            List<List<BitSet>> longer = new ArrayList<>(choices.size() * mine.size());
            for (List<BitSet> choice : choices) {
                for (BitSet region : mine) {
                    List<BitSet> more = new ArrayList<>(choice);
                    more.add(region);
                    longer.add(more);
                }
            }
            choices = longer;
        }
        return choices;
    }

    /** The weights of sets added up for each choice of regions; what comes to 0 is left out. */
    Map<List<BitSet>, BigInteger> weigh(List<SurfaceSets.Weighted> sets) {
        Map<List<BitSet>, BigInteger> weights = new LinkedHashMap<>();
        for (SurfaceSets.Weighted set : sets) {
            for (List<BitSet> each : of(set.surfaces())) {
                weights.merge(each, set.weight(), BigInteger::add);
            }
        }
        weights.values().removeIf(weight -> weight.signum() == 0);
        return weights;
    }

    /** The part of a choice of regions for all limbs that is a chain's. */
    List<BitSet> part(List<BitSet> regions, Chain other) {
        return Arrays.stream(other.limbs)
                .mapToObj(limb -> regions.get(chain.dimension(limb)))
                .toList();
    }

    private List<BitSet> regions(int d, BitSet set) {
        BitSet rest = (BitSet) set.clone();
        rest.and(chain.reach[d]);
        List<BitSet> regions = new ArrayList<>();
        for (int s = rest.nextSetBit(0); s >= 0; s = rest.nextSetBit(0)) {
            BitSet region = new BitSet();
            region.set(s);
            rest.clear(s);
            // Surfaces of the region that still have to be looked at, in any order.
            BitSet open = (BitSet) region.clone();
            for (int t = s; t >= 0; t = open.nextSetBit(0)) {
                open.clear(t);
                BitSet found = (BitSet) near[d][t].clone();
                found.and(rest);
                rest.andNot(found);
                region.or(found);
                open.or(found);
            }
            regions.add(region);
        }
        return regions;
    }
}
