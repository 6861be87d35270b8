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
import java.util.concurrent.atomic.AtomicReferenceArray;
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

    /** Fewer pieces of work than these are not worth another thread. */
    static final int PARALLEL_FROM = 128;

    /** Where blending sets of surfaces would take more, they are read one by one. */
    private static final double BLEND_BYTES = 96 << 20;

    private static final int MOST_BLENDED = 1 << 16;
    private static final int MOST_WEIGHT_BITS = 40;

    /** So many states of passages in all are kept. */
    private static final long STATES_KEPT = 1 << 20;

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

    /** All limbs that strike taken as one chain. */
    final Chain joint;

    /** For each choice all limbs within it, once asked for. */
    private final Lazy<AtomicReferenceArray<@Nullable Passage>> passages;

    /** For each chain its round trips by shape: bounds of one shape share them. */
    private final List<Map<Shape, RoundTrips.Ways>> ways = new ArrayList<>();

    private final Lazy<List<Regions>> regions;
    private final Lazy<List<Ground>> grounds;
    private final Lazy<Ground> jointGround;

    /** For all limbs the choices of regions that the sets of surfaces come to. */
    private final Lazy<List<Regions.Weighted>> choices;

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
     * @param blending whether to blend sets of surfaces, where that does not take too much
     */
    Family(Plan plan, List<SurfaceSets.Weighted> sets, boolean narrow, boolean blending) {
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
        joint = chains.size() == 1 ? chains.get(0) : Chain.joint(plan);
        regions = new Lazy<>(() -> chains.stream().map(c -> new Regions(plan, c)).toList());
        grounds = new Lazy<>(() -> chains.stream().map(c -> new Ground(plan, c)).toList());
        jointGround = new Lazy<>(() -> chains.size() == 1 ? ground(0) : new Ground(plan, joint));
        choices = new Lazy<>(() -> new Regions(plan, joint).weigh(sets));
        passages = new Lazy<>(() -> new AtomicReferenceArray<>(choices().size()));
        for (Chain ignored : chains) {
            ways.add(new ConcurrentHashMap<>());
        }
        layouts =
                sets.size() <= LAYOUTS_KEPT
                        ? new @Nullable Layout[sets.size()][chains.size()]
                        : new @Nullable Layout[0][];
        totals = new @Nullable BigInteger[sets.size()][chains.size()];
        root = makeRoot(blending);
        total = root.count();
    }

    private Node makeRoot(boolean blending) {
        if (!blending || sets.size() < 2 || sets.size() > MOST_BLENDED || !canBlend()) {
            countAll();
            return TableNode.root(this);
        }
        if (plan.limits.loop()) {
            return new LoopStarts(this).root();
        }
        Blend whole = blend(IntStream.range(0, choices().size()).toArray(), 0, null);
        int[] nowhere = new int[Limb.values().length];
        Arrays.fill(nowhere, -1);
        return new BlendNode(whole, 0, whole.ground.state(nowhere), whole.all());
    }

    private boolean canBlend() {
        if (!narrow && together() > Blend.MOST_CHOICES) {
            return false;
        }
        for (Regions.Weighted choice : choices()) {
            if (choice.weight().bitLength() > MOST_WEIGHT_BITS) {
                return false;
            }
        }
        if (plan.limits.loop() && !LoopStarts.onceEach(joint) && Onward.bytes(this) > BLEND_BYTES) {
            return false;
        }
        return Blend.bytes(plan, rows(), narrow) <= BLEND_BYTES;
    }

    /** How many choices a blend has at most; in a loop, those that hold a place of one limb. */
    private int together() {
        int[] holding = new int[plan.surfaces.size()];
        for (Regions.Weighted choice : choices()) {
            Bounds bounds = choice.bounds();
            for (int at = bounds.next(0, 0); at >= 0; at = bounds.next(0, at + 1)) {
                holding[at]++;
            }
        }
        return plan.limits.loop() ? Arrays.stream(holding).max().orElse(0) : choices().size();
    }

    /** How many rows the choices have at most; in a loop, those that hold its first places. */
    private double rows() {
        int m = plan.surfaces.size();
        boolean loop = plan.limits.loop();
        int last = joint.limbs.length - 1;
        double[] rows = new double[loop ? m * m : 1];
        for (Regions.Weighted choice : choices()) {
            Bounds bounds = choice.bounds();
            double mine = 1;
            for (int d = 0; d <= last; d++) {
                mine *= bounds.size(d) + (loop ? 0 : 1);
            }
            if (!loop) {
                rows[0] += mine;
                continue;
            }
            for (int first = bounds.next(0, 0); first >= 0; first = bounds.next(0, first + 1)) {
                int other = bounds.next(last, 0);
                for (; other >= 0; other = bounds.next(last, other + 1)) {
                    rows[first * m + other] += mine;
                }
            }
        }
        return Arrays.stream(rows).max().orElse(0);
    }

    /** For all limbs the choices of regions that the sets of surfaces come to. */
    List<Regions.Weighted> choices() {
        return choices.get();
    }

    /** Of some choices those in which a stroke of a kind stays within when it is on a surface. */
    int[] holding(int[] some, Kind kind, int surface) {
        int[] held = new int[some.length];
        int count = 0;
        for (int i : some) {
            boolean holds = true;
            for (int limb : kind.limbs()) {
                holds &= choices().get(i).bounds().has(joint.dimension(limb), surface);
            }
            if (holds) {
                held[count++] = i;
            }
        }
        return Arrays.copyOf(held, count);
    }

    /** The part of bounds for all limbs that is a chain's. */
    Bounds part(int chain, Bounds all) {
        return chains.size() == 1
                ? all
                : all.part(IntStream.of(chains.get(chain).limbs).map(joint::dimension).toArray());
    }

    /**
     * The tables of some choices of regions, by number, for the strokes from one on.
     *
     * @param ends in a loop, for each limb of all where it may strike last
     */
    Blend blend(int[] some, int from, BitSet @Nullable [] ends) {
        List<Regions.Weighted> mine = IntStream.of(some).mapToObj(choices()::get).toList();
        List<Passage> within = IntStream.of(some).mapToObj(this::passage).toList();
        return new Blend(jointGround(), mine, within, from, ends, narrow);
    }

    /** All limbs within a choice of regions, by number. */
    private Passage passage(int choice) {
        Passage known = passages.get().get(choice);
        if (known == null) {
            known = new Passage(jointGround(), choices().get(choice).bounds(), narrow);
            // Many are asked for again and again; a great many would take too much memory.
            if ((long) choices().size() * jointGround().size <= STATES_KEPT) {
                passages.get().set(choice, known);
            }
        }
        return known;
    }

    /** A chain within a choice of regions, by number. */
    Passage passage(int chain, int choice) {
        return chains.size() == 1
                ? passage(choice)
                : new Passage(ground(chain), part(chain, choices().get(choice).bounds()), narrow);
    }

    /** Where the limbs of a chain may stand. */
    Ground ground(int chain) {
        return grounds.get().get(chain);
    }

    /** Where all limbs may stand. */
    Ground jointGround() {
        return jointGround.get();
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
        for (Bounds bounds : regions.get().get(chain).of(sets.get(set).surfaces())) {
            sum = sum.add(trips(chain, new Passage(ground(chain), bounds, narrow)).total());
        }
        return sum;
    }

    /** In a loop, the ways of a chain within bounds. */
    RoundTrips trips(int chain, Passage passage) {
        return new RoundTrips(passage, ways.get(chain));
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
