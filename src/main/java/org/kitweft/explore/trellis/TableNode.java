package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.Limb;

/**
 * A beginning read from the tables of a family's sets of surfaces: all of them hold what it has
 * struck. Immutable but for its memory of children.
 */
final class TableNode implements Node {
    private static final int LIMBS = Limb.values().length;
    private static final int NOWHERE = -1;
    private static final int REMEMBERS_CHILDREN_BEFORE = 2;

    private final Family family;

    /** How many strokes have been played. */
    final int depth;

    /** Where each limb last struck; negative for nowhere yet. */
    private final int[] places;

    /** In a loop: where each limb may end, given its beginning; else empty. */
    private final BitSet[] ends;

    /** For each chain, how many of its strokes have been played. */
    private final int[] progress;

    /** The sets of surfaces that hold all struck so far, by number. */
    private final int[] sets;

    /** For each of the sets and each chain, the ways to go on; narrow. */
    private final long[][] low;

    /** The same, wide. */
    private final BigInteger[][] big;

    /** For each of the sets and each chain its closed table, once there is one. */
    private final @Nullable Table[][] tables;

    private final long lowCount;
    private final BigInteger bigCount;
    private final @Nullable TableNode[] children;

    private TableNode(
            Family family,
            int depth,
            int[] places,
            BitSet[] ends,
            int[] progress,
            int[] sets,
            long[][] low,
            BigInteger[][] big,
            @Nullable Table[][] tables) {
        this.family = family;
        this.depth = depth;
        this.places = places;
        this.ends = ends;
        this.progress = progress;
        this.sets = sets;
        this.low = low;
        this.big = big;
        this.tables = tables;
        long lowSum = 0;
        BigInteger bigSum = BigInteger.ZERO;
        for (int s = 0; s < sets.length; s++) {
            if (family.narrow) {
                long product = family.sets.get(sets[s]).lowWeight();
                for (long ways : low[s]) {
                    product *= ways;
                }
                lowSum += product;
            } else {
                BigInteger product = family.sets.get(sets[s]).weight();
                for (BigInteger ways : big[s]) {
                    product = product.multiply(ways);
                }
                bigSum = bigSum.add(product);
            }
        }
        lowCount = lowSum;
        bigCount = bigSum;
        boolean remembers = depth < REMEMBERS_CHILDREN_BEFORE;
        children = new @Nullable TableNode[remembers ? family.plan.surfaces.size() : 0];
    }

    /** Nothing played yet. */
    static TableNode root(Family family) {
        int[] places = new int[LIMBS];
        Arrays.fill(places, NOWHERE);
        BitSet[] ends = family.plan.limits.loop() ? LoopEnds.any(family.chains) : new BitSet[0];
        long[][] low = new long[family.narrow ? family.sets.size() : 0][family.chains.size()];
        BigInteger[][] big =
                new BigInteger[family.narrow ? 0 : family.sets.size()][family.chains.size()];
        for (int s = 0; s < family.sets.size(); s++) {
            for (int c = 0; c < family.chains.size(); c++) {
                if (family.narrow) {
                    low[s][c] = family.total(s, c).longValue();
                } else {
                    big[s][c] = family.total(s, c);
                }
            }
        }
        return new TableNode(
                family,
                0,
                places,
                ends,
                new int[family.chains.size()],
                IntStream.range(0, family.sets.size()).toArray(),
                low,
                big,
                new @Nullable Table[family.sets.size()][family.chains.size()]);
    }

    @Override
    public long lowCount() {
        return lowCount;
    }

    @Override
    public BigInteger count() {
        return family.narrow ? BigInteger.valueOf(lowCount) : bigCount;
    }

    @Override
    public boolean isAlive() {
        return family.narrow ? lowCount != 0 : bigCount.signum() != 0;
    }

    /** Where a limb stands, by its ordinal; negative for nowhere yet. */
    int place(int limb) {
        return places[limb];
    }

    /** Whether a limb may end on a surface, given how it began. */
    boolean mayEnd(int limb, int surface) {
        return ends.length == 0 || ends[limb].get(surface);
    }

    /** In a loop: where a limb may end, given how it began. */
    BitSet ends(int limb) {
        return ends[limb];
    }

    /** How many strokes of a chain have been played. */
    int progress(int chain) {
        return progress[chain];
    }

    @Override
    public long lowCount(int surface) {
        int chain = family.chainOf[depth];
        Table table = sets.length == 1 ? tables[0][chain] : null;
        if (table == null) {
            return extended(surface).lowCount;
        }
        // The usual case without making a node: one set, and a table that needs no columns.
        Kind kind = family.plan.kinds[depth];
        if (kind.limbs().length > 1) {
            return extended(surface).lowCount;
        }
        if (!mayMove(kind, surface) || !family.sets.get(sets[0]).surfaces().get(surface)) {
            return 0;
        }
        Layout layout = table.layout;
        int[] moved = places.clone();
        moved[kind.limbs()[0]] = surface;
        int state = state(layout, moved);
        if (!layout.valid[state]) {
            return 0;
        }
        long product = table.layer(progress[chain] + 1).low(state);
        for (int c = 0; c < low[0].length; c++) {
            product *= c == chain ? 1 : low[0][c];
        }
        return product * family.sets.get(sets[0]).lowWeight();
    }

    private static int state(Layout layout, int[] places) {
        int state = 0;
        for (int d = 0; d < layout.sizes.length; d++) {
            int stands = places[layout.chain.limbs[d]];
            state += (stands < 0 ? 0 : layout.places[d][stands]) * layout.strides[d];
        }
        return state;
    }

    private boolean mayMove(Kind kind, int surface) {
        for (int slot = 0; slot < kind.limbs().length; slot++) {
            int from = places[kind.limbs()[slot]];
            if (from >= 0 && !kind.moves().get(slot).allows(from, surface)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Node child(int surface) {
        TableNode known = extended(surface);
        return known.closed();
    }

    /** The same where it takes one table alone and a number there. */
    private Node closed() {
        Table table = sets.length == 1 && family.sets.size() == 1 ? tables[0][0] : null;
        if (table == null || family.chains.size() > 1) {
            return this;
        }
        int state = state(table.layout, places);
        return table.layout.valid[state] ? new ClosedNode(table, depth, state) : DeadEnd.HERE;
    }

    /** The beginning with one more stroke, on a surface, with all that it knows. */
    TableNode extended(int surface) {
        if (children.length == 0) {
            return makeChild(surface);
        }
        TableNode known = children[surface];
        if (known == null) {
            known = makeChild(surface);
            children[surface] = known;
        }
        return known;
    }

    private TableNode makeChild(int surface) {
        Kind kind = family.plan.kinds[depth];
        int chain = family.chainOf[depth];
        int[] nextPlaces = places.clone();
        for (int limb : kind.limbs()) {
            nextPlaces[limb] = surface;
        }
        BitSet[] nextEnds =
                progress[chain] >= family.chains.get(chain).head || ends.length == 0
                        ? ends
                        : LoopEnds.after(family.plan, ends, kind, places, surface);
        int[] nextProgress = progress.clone();
        nextProgress[chain]++;
        int[] nextSets = sets;
        if (!mayMove(kind, surface) || crossed(kind, chain, nextPlaces)) {
            nextSets = new int[0];
        } else if (sets.length != 1 || !family.sets.get(sets[0]).surfaces().get(surface)) {
            nextSets =
                    Arrays.stream(sets)
                            .filter(s -> family.sets.get(s).surfaces().get(surface))
                            .toArray();
        }
        long[][] nextLow = new long[family.narrow ? nextSets.length : 0][];
        BigInteger[][] nextBig = new BigInteger[family.narrow ? 0 : nextSets.length][];
        @Nullable Table[][] nextTables = new @Nullable Table[nextSets.length][];
        int mine = 0;
        for (int s = 0; s < nextSets.length; s++) {
            while (sets[mine] != nextSets[s]) {
                mine++;
            }
            Reader reader =
                    new Reader(
                            tables[mine][chain],
                            nextSets[s],
                            chain,
                            nextPlaces,
                            nextEnds,
                            nextProgress[chain]);
            nextTables[s] = tables[mine].clone();
            nextTables[s][chain] = reader.closed ? reader.table : null;
            if (family.narrow) {
                nextLow[s] = low[mine].clone();
                nextLow[s][chain] = reader.low();
            } else {
                nextBig[s] = big[mine].clone();
                nextBig[s][chain] = reader.big();
            }
        }
        return new TableNode(
                family,
                depth + 1,
                nextPlaces,
                nextEnds,
                nextProgress,
                nextSets,
                nextLow,
                nextBig,
                nextTables);
    }

    private boolean crossed(Kind kind, int chain, int[] nextPlaces) {
        if (!family.chains.get(chain).crossing) {
            return false;
        }
        int right = nextPlaces[Limb.RIGHT_HAND.ordinal()];
        int left = nextPlaces[Limb.LEFT_HAND.ordinal()];
        return right >= 0
                && left >= 0
                && Arrays.stream(kind.limbs()).anyMatch(limb -> Limb.values()[limb].isHand())
                && !family.plan.uncrossed(right, left);
    }

    private Table closedTable(int set, int chain, BitSet[] endsByLimb) {
        return family.closed(
                set, chain, endsByLimb.length == 0 ? null : family.endsOf(chain, endsByLimb));
    }

    /** Reads from the tables the ways in which a chain can go on. */
    private final class Reader {
        private final Table table;
        private final int layer;
        private final boolean closed;
        private final int[] nextPlaces;
        private final BitSet[] nextEnds;

        Reader(
                @Nullable Table known,
                int set,
                int chain,
                int[] nextPlaces,
                BitSet[] nextEnds,
                int layer) {
            this.nextPlaces = nextPlaces;
            this.nextEnds = nextEnds;
            this.layer = layer;
            closed = nextEnds.length == 0 || layer >= family.chains.get(chain).head;
            if (known != null) {
                table = known;
            } else {
                table = closed ? closedTable(set, chain, nextEnds) : family.open(set, chain);
            }
        }

        long low() {
            long sum = 0;
            for (int c = 0; c < table.columns; c++) {
                int index = index(c);
                sum += index < 0 ? 0 : table.layer(layer).low(index);
            }
            return sum;
        }

        BigInteger big() {
            BigInteger sum = BigInteger.ZERO;
            for (int c = 0; c < table.columns; c++) {
                int index = index(c);
                sum = index < 0 ? sum : sum.add(table.layer(layer).get(index));
            }
            return sum;
        }

        /** Where the number for a column stands; negative if the column does not fit. */
        private int index(int column) {
            Layout layout = table.layout;
            int state = 0;
            for (int d = 0; d < layout.sizes.length; d++) {
                int limb = layout.chain.limbs[d];
                int surface = nextPlaces[limb];
                if (!closed) {
                    int end = layout.surface(table.ends[column], d);
                    if (!nextEnds[limb].get(end)) {
                        return -1;
                    }
                    surface = surface < 0 ? end : surface;
                }
                state += (surface < 0 ? 0 : layout.places[d][surface]) * layout.strides[d];
            }
            return layout.valid[state] ? state * table.columns + column : -1;
        }
    }
}
