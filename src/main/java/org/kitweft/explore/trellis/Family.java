package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The tables of a plan's chains over all sets of surfaces that it takes, and the total they add up
 * to. Safe for use by several threads; keeps recent tables up to {@value #CACHE_BYTES} bytes.
 */
final class Family {
    private static final long CACHE_BYTES = 32L << 20;
    private static final int LAYOUTS_KEPT = 1024;
    private static final int PARALLEL_FROM = 128;

    final Plan plan;
    final List<Chain> chains;
    final List<SurfaceSets.Weighted> sets;

    /** For each stroke its chain. */
    final int[] chainOf;

    /** Whether every total stays below 2^63, so that 64 bits do. */
    final boolean narrow;

    /** For each set and chain the ways to play it, narrow. */
    final long[][] lowTotals;

    /** For each set and chain the ways to play it; empty if narrow. */
    final BigInteger[][] totals;

    final BigInteger total;
    private final @Nullable Layout[][] layouts;
    private final LinkedHashMap<Key, Table> cache = new LinkedHashMap<>(16, 0.75f, true);
    private long cached;

    private record Key(int set, int chain, @Nullable List<BitSet> ends) {}

    /**
     * Counts.
     *
     * @param narrow whether the plan's bound is below 2^63; may be false even so
     */
    Family(Plan plan, List<SurfaceSets.Weighted> sets, boolean narrow) {
        this.plan = plan;
        this.sets = sets;
        chains = Chain.of(plan);
        chainOf = new int[plan.kinds.length];
        for (int c = 0; c < chains.size(); c++) {
            for (int stroke : chains.get(c).strokes) {
                chainOf[stroke] = c;
            }
        }
        this.narrow = narrow;
        layouts =
                sets.size() <= LAYOUTS_KEPT
                        ? new @Nullable Layout[sets.size()][chains.size()]
                        : new @Nullable Layout[0][];
        lowTotals = new long[narrow ? sets.size() : 0][];
        totals = new BigInteger[narrow ? 0 : sets.size()][];
        total = addUp();
    }

    private BigInteger addUp() {
        List<Map<BitSet, Number>> known = new ArrayList<>();
        chains.forEach(chain -> known.add(new ConcurrentHashMap<>()));
        IntStream all = IntStream.range(0, sets.size());
        IntStream each = sets.size() >= PARALLEL_FROM ? all.parallel() : all;
        if (narrow) {
            return BigInteger.valueOf(
                    each.mapToLong(
                                    s -> {
                                        lowTotals[s] = new long[chains.size()];
                                        long product = sets.get(s).lowWeight();
                                        for (int c = 0; c < chains.size(); c++) {
                                            lowTotals[s][c] = chainTotal(s, c, known).longValue();
                                            product *= lowTotals[s][c];
                                        }
                                        return product;
                                    })
                            .sum());
        }
        return each.mapToObj(
                        s -> {
                            totals[s] = new BigInteger[chains.size()];
                            BigInteger product = sets.get(s).weight();
                            for (int c = 0; c < chains.size(); c++) {
                                totals[s][c] = (BigInteger) chainTotal(s, c, known);
                                product = product.multiply(totals[s][c]);
                            }
                            return product;
                        })
                .reduce(BigInteger.ZERO, BigInteger::add);
    }

    /** The ways to play a chain within a set; sets that look the same to it are counted once. */
    private Number chainTotal(int set, int chain, List<Map<BitSet, Number>> known) {
        BitSet seen = (BitSet) sets.get(set).surfaces().clone();
        seen.and(chains.get(chain).surfaces);
        Number before = known.get(chain).get(seen);
        if (before != null) {
            return before;
        }
        Number ways;
        if (plan.limits.loop()) {
            RoundTrips trips = new RoundTrips(layout(set, chain), narrow);
            ways = narrow ? (Number) trips.low() : trips.total();
        } else {
            Wide start = Table.closed(layout(set, chain), null, narrow, 0, 1).layer(0);
            ways = narrow ? (Number) start.low(0) : start.get(0);
        }
        known.get(chain).put(seen, ways);
        return ways;
    }

    private Layout layout(int set, int chain) {
        if (layouts.length == 0) {
            return new Layout(plan, chains.get(chain), sets.get(set).surfaces());
        }
        Layout known = layouts[set][chain];
        if (known == null) {
            known = new Layout(plan, chains.get(chain), sets.get(set).surfaces());
            layouts[set][chain] = known;
        }
        return known;
    }

    /** In a loop: the open table of the strokes before all limbs of a chain have struck. */
    Table open(int set, int chain) {
        return get(new Key(set, chain, null));
    }

    /** The closed table of a chain; in a loop, of the strokes after all its limbs have struck. */
    Table closed(int set, int chain, BitSet @Nullable [] ends) {
        return get(new Key(set, chain, ends == null ? List.of() : List.of(ends)));
    }

    private Table get(Key key) {
        synchronized (cache) {
            Table known = cache.get(key);
            if (known != null) {
                return known;
            }
        }
        Table made = build(key.set, key.chain, key.ends);
        synchronized (cache) {
            if (cache.put(key, made) == null) {
                cached += made.bytes();
            }
            Iterator<Table> eldest = cache.values().iterator();
            while (cached > CACHE_BYTES && cache.size() > 1) {
                cached -= eldest.next().bytes();
                eldest.remove();
            }
        }
        return made;
    }

    /** The table of all strokes of a chain, made anew: open in a loop, else closed. */
    Table whole(int set, int chain) {
        Layout layout = layout(set, chain);
        int all = layout.chain.kinds.length + 1;
        return plan.limits.loop()
                ? Table.open(layout, narrow, all)
                : Table.closed(layout, null, narrow, 0, all);
    }

    /** The ways to play a chain within a set. */
    BigInteger total(int set, int chain) {
        return narrow ? BigInteger.valueOf(lowTotals[set][chain]) : totals[set][chain];
    }

    private Table build(int set, int chain, @Nullable List<BitSet> ends) {
        Layout layout = layout(set, chain);
        int all = layout.chain.kinds.length + 1;
        if (!plan.limits.loop()) {
            return Table.closed(layout, null, narrow, 0, all);
        }
        if (ends == null) {
            return Table.open(layout, narrow, Math.max(1, layout.chain.head));
        }
        return Table.closed(layout, ends.toArray(BitSet[]::new), narrow, layout.chain.head, all);
    }

    /** Where each limb of a chain may end: the parts of an array by limb. */
    BitSet[] endsOf(int chain, BitSet[] byLimb) {
        return Arrays.stream(chains.get(chain).limbs)
                .mapToObj(limb -> byLimb[limb])
                .toArray(BitSet[]::new);
    }
}
