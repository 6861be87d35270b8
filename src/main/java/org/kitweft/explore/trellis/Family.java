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
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.Limb;

/**
 * The tables of a plan's chains over all sets of surfaces that it takes, and the total they add up
 * to. Safe for use by several threads; keeps recent tables up to {@value #CACHE_BYTES} bytes.
 */
final class Family {
    private static final long CACHE_BYTES = 32L << 20;
    private static final int LAYOUTS_KEPT = 1024;
    private static final int PARALLEL_FROM = 128;

    /** Where keeping track of surfaces would take more, sets of surfaces are read one by one. */
    private static final double USE_BYTES = 128 << 20;

    final Plan plan;
    final List<Chain> chains;
    final List<SurfaceSets.Weighted> sets;

    /** For each stroke its chain. */
    final int[] chainOf;

    /** Whether every total stays below 2^63, so that 64 bits do. */
    final boolean narrow;

    final BigInteger total;

    /** For each set and chain the ways to play it; empty until somebody asks. */
    private final @Nullable BigInteger[][] totals;

    /** For each chain the ways to play it within surfaces for each of its limbs. */
    private final List<Map<List<BitSet>, RoundTrips>> trips = new ArrayList<>();

    private final List<Regions> regions;
    private final @Nullable Layout[][] layouts;
    private final LinkedHashMap<Key, Table> cache = new LinkedHashMap<>(16, 0.75f, true);
    private long cached;
    private final Node root;

    /** The root over all chains at once; made when asked for. */
    private volatile @Nullable Node joined;

    private record Key(int set, int chain, @Nullable List<BitSet> ends) {}

    /**
     * Counts.
     *
     * @param narrow whether the plan's bound is below 2^63; may be false even so
     * @param tracking whether to keep track of surfaces struck, where that does not take too much
     */
    Family(Plan plan, List<SurfaceSets.Weighted> sets, boolean narrow, boolean tracking) {
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
        regions = chains.stream().map(chain -> new Regions(plan, chain)).toList();
        chains.forEach(chain -> trips.add(new ConcurrentHashMap<>()));
        layouts =
                sets.size() <= LAYOUTS_KEPT
                        ? new @Nullable Layout[sets.size()][chains.size()]
                        : new @Nullable Layout[0][];
        totals = new @Nullable BigInteger[sets.size()][chains.size()];
        root = makeRoot(tracking);
        total = root.count();
    }

    private Node makeRoot(boolean tracking) {
        Chain joint = Chain.joint(plan);
        double bytes = SurfaceUse.bound(plan, joint) * (plan.kinds.length + 1) * Long.BYTES;
        double places = narrow ? 1 : plan.bound().bitLength() / (double) Wide.DIGIT_BITS;
        if (!tracking
                || sets.size() == 1
                || plan.surfaces.size() > SurfaceUse.MOST_SURFACES
                || bytes * places > USE_BYTES) {
            countAll();
            return TableNode.root(this);
        }
        if (plan.limits.loop()) {
            return new LoopStarts(this, joint).root();
        }
        SurfaceUse use = new SurfaceUse(plan, joint);
        int[] nowhere = new int[Limb.values().length];
        Arrays.fill(nowhere, -1);
        int start = use.state(nowhere, List.of());
        Completions whole = new Completions(use, 0, List.of(start), null, narrow);
        return new UseNode(whole, 0, whole.start(start));
    }

    private void countAll() {
        sideBySide(
                sets.size(),
                s -> IntStream.range(0, chains.size()).mapToObj(c -> total(s, c)).toList());
    }

    /** Does work for each number from 0 on, on several threads where there is much. */
    <T> List<T> sideBySide(int count, IntFunction<T> work) {
        IntStream all = IntStream.range(0, count);
        return (count >= PARALLEL_FROM ? all.parallel() : all).mapToObj(work).toList();
    }

    /** The ways to play a chain within a set. */
    BigInteger total(int set, int chain) {
        BigInteger known = totals[set][chain];
        if (known == null) {
            known = chainTotal(set, chain);
            totals[set][chain] = known;
        }
        return known;
    }

    private BigInteger chainTotal(int set, int chain) {
        if (!plan.limits.loop()) {
            Wide start = Table.closed(layout(set, chain), null, narrow, 0, 1).layer(0);
            return narrow ? BigInteger.valueOf(start.low(0)) : start.get(0);
        }
        BigInteger sum = BigInteger.ZERO;
        for (List<BitSet> surfaces : regions.get(chain).of(sets.get(set).surfaces())) {
            sum = sum.add(trips(chain, surfaces).total());
        }
        return sum;
    }

    /** In a loop, the ways of a chain within surfaces for each of its limbs; made once. */
    RoundTrips trips(int chain, List<BitSet> surfaces) {
        return trips.get(chain)
                .computeIfAbsent(
                        surfaces,
                        any -> new RoundTrips(new Layout(plan, chains.get(chain), any), narrow));
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

    /** Without loop, the table of all strokes of a chain, made anew. */
    Table whole(int set, int chain) {
        Layout layout = layout(set, chain);
        return Table.closed(layout, null, narrow, 0, layout.chain.kinds.length + 1);
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

    /** Nothing played yet. */
    Node root() {
        if (plan.limits.loop()
                || chains.size() < 2
                || sets.size() != 1
                || !sets.get(0).weight().equals(BigInteger.ONE)) {
            return root;
        }
        Node known = joined;
        if (known == null) {
            known = joined();
            joined = known;
        }
        return known;
    }

    /**
     * Reads from one table of all limbs, if that is not too large: it takes longer to make than one
     * for each chain, but then nothing needs to be multiplied for each beginning.
     */
    private Node joined() {
        Chain joint = Chain.joint(plan);
        double numbers = plan.kinds.length + 1.0;
        for (BitSet reach : joint.reach) {
            numbers *= reach.cardinality() + 1;
        }
        double places = narrow ? 1 : plan.bound().bitLength() / (double) Wide.DIGIT_BITS + 1;
        if (numbers * places * Long.BYTES > CACHE_BYTES) {
            return root;
        }
        Layout layout = new Layout(plan, joint, sets.get(0).surfaces());
        Table table = Table.closed(layout, null, narrow, 0, plan.kinds.length + 1);
        return new ClosedNode(table, 0, 0);
    }

    /** Where each limb of a chain may end: the parts of an array by limb. */
    BitSet[] endsOf(int chain, BitSet[] byLimb) {
        return Arrays.stream(chains.get(chain).limbs)
                .mapToObj(limb -> byLimb[limb])
                .toArray(BitSet[]::new);
    }
}
