package org.kitweft.explore.trellis;

import java.lang.ref.SoftReference;
import java.math.BigInteger;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.Limb;

/**
 * The beginnings of a loop that counts different surfaces, up to where each limb has struck. From
 * there on, where the limbs may strike last is known, and a {@link Blend} made for it tells the
 * rest; recent ones are kept up to {@value #CACHE_BYTES} bytes. Safe for use by several threads.
 */
final class LoopStarts {
    private static final long CACHE_BYTES = 48L << 20;

    /** After so many strokes there are many beginnings. */
    private static final int REMEMBERS = 4;

    private final Family family;
    private final Plan plan;
    private final Chain joint;
    private final FirstWays ways;
    private final LinkedHashMap<List<Object>, Blend> cache = new LinkedHashMap<>(16, 0.75f, true);
    private long cached;
    private final Start root;

    LoopStarts(Family family) {
        this.family = family;
        plan = family.plan;
        joint = family.joint;
        ways = onceEach(joint) ? new Returns(family) : new Onward(family);
        int[] nowhere = new int[Limb.values().length];
        Arrays.fill(nowhere, -1);
        int[] all = IntStream.range(0, family.choices().size()).toArray();
        root = new Start(nowhere, LoopEnds.any(List.of(joint)), List.of(), all);
    }

    /** Whether no limb strikes twice before all have struck. */
    static boolean onceEach(Chain joint) {
        int strikes = 0;
        for (int j = 0; j < joint.head; j++) {
            strikes += joint.kinds[j].limbs().length;
        }
        return strikes == joint.limbs.length;
    }

    Node root() {
        return root;
    }

    private synchronized Blend blend(BitSet[] ends, int[] choices) {
        // Beginnings that end alike and hold the same go on alike, whichever way they have come.
        List<Object> key = List.of(List.of(ends), IntBuffer.wrap(choices));
        Blend known = cache.get(key);
        if (known != null) {
            return known;
        }
        Blend made = family.blend(choices, joint.head, ends);
        cache.put(key, made);
        cached += made.bytes();
        Iterator<Blend> eldest = cache.values().iterator();
        while (cached > CACHE_BYTES && cache.size() > 1) {
            cached -= eldest.next().bytes();
            eldest.remove();
        }
        return made;
    }

    /** One beginning. */
    private final class Start implements Node {
        private final int[] places;
        private final BitSet[] ends;
        private final List<Integer> struck;

        /** The choices of regions that hold what has been struck, by number. */
        private final int[] choices;

        /** By surface; none where they are not remembered. */
        private final AtomicReferenceArray<@Nullable Node> children;

        /** The number of ways to complete it, once asked for. */
        private volatile @Nullable BigInteger count;

        /** Once all limbs have struck: the same, read from a blend as long as memory lasts. */
        private volatile SoftReference<@Nullable BlendNode> whole = new SoftReference<>(null);

        Start(int[] places, BitSet[] ends, List<Integer> struck, int[] choices) {
            this.places = places;
            this.ends = ends;
            this.struck = struck;
            this.choices = choices;
            boolean remembers = struck.size() < Math.min(REMEMBERS, joint.head);
            children = new AtomicReferenceArray<>(remembers ? plan.surfaces.size() : 0);
        }

        @Override
        public BigInteger count() {
            BigInteger known = count;
            if (known == null) {
                known = struck.isEmpty() ? sum() : ways.after(places, struck, choices, ends);
                count = known;
            }
            return known;
        }

        /** Those of its children, which will be asked for next. */
        private BigInteger sum() {
            BigInteger sum = BigInteger.ZERO;
            Kind kind = plan.kinds[0];
            for (int t = 0; t < kind.targets().length; t++) {
                BigInteger sounds = BigInteger.valueOf(kind.sounds()[t]);
                sum = sum.add(child(kind.targets()[t]).count().multiply(sounds));
            }
            return sum;
        }

        @Override
        public long lowCount() {
            return count().longValue();
        }

        @Override
        public boolean isAlive() {
            return count().signum() != 0;
        }

        @Override
        public long lowCount(int surface) {
            return struck.size() < joint.head
                    ? child(surface).lowCount()
                    : whole().lowCount(surface);
        }

        @Override
        public boolean takeOff(Rest rest, int surface) {
            return struck.size() < joint.head
                    ? child(surface).takeOff(rest)
                    : whole().takeOff(rest, surface);
        }

        @Override
        public Node child(int surface) {
            if (struck.size() == joint.head) {
                return whole().child(surface);
            }
            Node known = children.length() > 0 ? children.get(surface) : null;
            if (known == null) {
                known = makeChild(plan.kinds[struck.size()], surface);
                if (children.length() > 0) {
                    children.set(surface, known);
                }
            }
            return known;
        }

        private Node makeChild(Kind kind, int surface) {
            int[] moved = places.clone();
            for (int slot = 0; slot < kind.limbs().length; slot++) {
                int limb = kind.limbs()[slot];
                if (places[limb] >= 0 && !kind.moves().get(slot).allows(places[limb], surface)) {
                    return DeadEnd.HERE;
                }
                moved[limb] = surface;
            }
            int right = moved[Limb.RIGHT_HAND.ordinal()];
            int left = moved[Limb.LEFT_HAND.ordinal()];
            if (right >= 0 && left >= 0 && !plan.uncrossed(right, left)) {
                return DeadEnd.HERE;
            }
            List<Integer> more = new ArrayList<>(struck);
            more.add(surface);
            return new Start(
                    moved,
                    LoopEnds.after(plan, ends, kind, places, surface),
                    List.copyOf(more),
                    family.holding(choices, kind, surface));
        }

        private BlendNode whole() {
            BlendNode known = whole.get();
            if (known == null) {
                BitSet[] mine =
                        Arrays.stream(joint.limbs)
                                .mapToObj(limb -> ends[limb])
                                .toArray(BitSet[]::new);
                Blend blend = blend(mine, choices);
                int state = blend.ground.state(places);
                known = new BlendNode(blend, joint.head, state, blend.all());
                whole = new SoftReference<>(known);
            }
            return known;
        }
    }
}
