package org.kitweft.explore.trellis;

import java.lang.ref.WeakReference;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.Limb;

/**
 * The beginnings of a loop that counts different surfaces, up to where each limb has struck. From
 * there on, where the limbs may strike last is known, and {@link Completions} made for it tell the
 * rest; recent ones are kept up to {@value #CACHE_BYTES} bytes. Safe for use by several threads.
 */
final class LoopStarts {
    private static final long CACHE_BYTES = 48L << 20;

    private final Plan plan;
    private final SurfaceUse use;
    private final boolean narrow;

    private final FirstWays ways;

    /** For each end that is asked for, the states in which the strokes before may leave limbs. */
    private final Map<List<BitSet>, List<Integer>> starts = new HashMap<>();

    private final LinkedHashMap<List<BitSet>, Completions> cache =
            new LinkedHashMap<>(16, 0.75f, true);
    private long cached;
    private final Start root;

    LoopStarts(Family family, Chain joint) {
        plan = family.plan;
        narrow = family.narrow;
        ways = onceEach(joint) ? new Returns(family, joint) : new Onward(family, joint);
        use = new SurfaceUse(plan, joint);
        int[] nowhere = new int[Limb.values().length];
        Arrays.fill(nowhere, -1);
        root = new Start(0, nowhere, LoopEnds.any(List.of(joint)), List.of());
    }

    /** Whether no limb strikes twice before all have struck. */
    private static boolean onceEach(Chain joint) {
        int strikes = 0;
        for (int j = 0; j < joint.head; j++) {
            strikes += joint.kinds[j].limbs().length;
        }
        return strikes == joint.limbs.length;
    }

    Node root() {
        return root;
    }

    private synchronized Completions completions(List<BitSet> ends) {
        Completions known = cache.get(ends);
        if (known != null) {
            return known;
        }
        BitSet[] byLimb = new BitSet[Limb.values().length];
        for (int d = 0; d < use.chain.limbs.length; d++) {
            byLimb[use.chain.limbs[d]] = ends.get(d);
        }
        Completions made = new Completions(use, use.chain.head, starts.get(ends), byLimb, narrow);
        cache.put(ends, made);
        cached += made.bytes();
        Iterator<Completions> eldest = cache.values().iterator();
        while (cached > CACHE_BYTES && cache.size() > 1) {
            cached -= eldest.next().bytes();
            eldest.remove();
        }
        return made;
    }

    /** One beginning. */
    private final class Start implements Node {
        private final int depth;
        private final int[] places;
        private final List<BitSet> ends;
        private final int state;

        /** By surface; none once all limbs have struck. */
        private final @Nullable Start[] children;

        private final BigInteger count;

        /** The same, ready to be taken off. */
        private final Wide digits;

        /** What it was read from last, as long as that is kept. */
        private volatile WeakReference<UseNode> whole = new WeakReference<>(null);

        Start(int depth, int[] places, BitSet[] endsByLimb, List<Integer> struck) {
            this.depth = depth;
            this.places = places;
            ends = Arrays.stream(use.chain.limbs).mapToObj(limb -> endsByLimb[limb]).toList();
            if (depth < use.chain.head) {
                state = SurfaceUse.NONE;
                children = new @Nullable Start[plan.surfaces.size()];
                count = follow(endsByLimb, struck);
                digits = Wide.of(count);
                return;
            }
            state = use.state(places, struck);
            children = new @Nullable Start[0];
            count =
                    state == SurfaceUse.NONE
                            ? BigInteger.ZERO
                            : ways.after(places, struck, endsByLimb);
            digits = Wide.of(count);
            if (count.signum() != 0) {
                starts.computeIfAbsent(ends, any -> new ArrayList<>()).add(state);
            }
        }

        /** Makes what follows, and adds it up. */
        private BigInteger follow(BitSet[] endsByLimb, List<Integer> struck) {
            Kind kind = plan.kinds[depth];
            BigInteger sum = BigInteger.ZERO;
            for (int t = 0; t < kind.targets().length; t++) {
                int surface = kind.targets()[t];
                Start child = follow(kind, surface, endsByLimb, struck);
                children[surface] = child;
                if (child != null) {
                    BigInteger sounds = BigInteger.valueOf(kind.sounds()[t]);
                    sum = sum.add(child.count.multiply(sounds));
                }
            }
            return sum;
        }

        private @Nullable Start follow(
                Kind kind, int surface, BitSet[] endsByLimb, List<Integer> struck) {
            int[] moved = places.clone();
            for (int slot = 0; slot < kind.limbs().length; slot++) {
                int limb = kind.limbs()[slot];
                if (places[limb] >= 0 && !kind.moves().get(slot).allows(places[limb], surface)) {
                    return null;
                }
                moved[limb] = surface;
            }
            int right = moved[Limb.RIGHT_HAND.ordinal()];
            int left = moved[Limb.LEFT_HAND.ordinal()];
            if (right >= 0 && left >= 0 && !plan.uncrossed(right, left)) {
                return null;
            }
            List<Integer> more = new ArrayList<>(struck);
            more.add(surface);
            BitSet[] nextEnds = LoopEnds.after(plan, endsByLimb, kind, places, surface);
            return new Start(depth + 1, moved, nextEnds, more);
        }

        @Override
        public long lowCount() {
            return count.longValue();
        }

        @Override
        public BigInteger count() {
            return count;
        }

        @Override
        public boolean isAlive() {
            return count.signum() != 0;
        }

        @Override
        public long lowCount(int surface) {
            if (children.length > 0) {
                Start child = children[surface];
                return child == null ? 0 : child.lowCount();
            }
            return count.signum() == 0 ? 0 : whole().lowCount(surface);
        }

        @Override
        public Node child(int surface) {
            if (children.length > 0) {
                Start child = children[surface];
                return child == null ? DeadEnd.HERE : child;
            }
            return count.signum() == 0 ? DeadEnd.HERE : whole().child(surface);
        }

        @Override
        public boolean takeOff(Rest rest) {
            return rest.takeOff(digits, 0);
        }

        @Override
        public boolean takeOff(Rest rest, int surface) {
            if (children.length > 0 || count.signum() == 0) {
                return child(surface).takeOff(rest);
            }
            return whole().takeOff(rest, surface);
        }

        /** The same, read from completions; made anew when memory has been short. */
        private UseNode whole() {
            UseNode known = whole.get();
            if (known == null) {
                Completions rest = completions(ends);
                known = new UseNode(rest, depth, rest.start(state));
                whole = new WeakReference<>(known);
            }
            return known;
        }
    }
}
