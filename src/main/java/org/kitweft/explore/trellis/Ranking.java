package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Iterator;
import java.util.NoSuchElementException;

/** From an index to its variation and back; variations as the option of each stroke. */
final class Ranking {
    private final Family family;
    private final Plan plan;

    Ranking(Family family) {
        this.family = family;
        this.plan = family.plan;
    }

    /** The options of an index below the total. */
    int[] at(BigInteger index) {
        return family.narrow ? at(index.longValueExact()) : atWide(index);
    }

    /** The same where all totals fit a long. */
    int[] at(long index) {
        int[] options = new int[plan.surfaceOf.length];
        long rest = index;
        Node node = family.root();
        long[] ways = new long[plan.surfaces.size()];
        boolean[] known = new boolean[ways.length];
        for (int i = 0; i < options.length; i++) {
            Arrays.fill(known, false);
            int[] surfaces = plan.surfaceOf[i];
            int o = 0;
            for (; ; o++) {
                int surface = surfaces[o];
                if (!known[surface]) {
                    ways[surface] = node.lowCount(surface);
                    known[surface] = true;
                }
                if (rest < ways[surface]) {
                    break;
                }
                rest -= ways[surface];
            }
            options[i] = o;
            node = node.child(surfaces[o]);
        }
        return options;
    }

    private int[] atWide(BigInteger index) {
        int[] options = new int[plan.surfaceOf.length];
        Rest rest = new Rest(index);
        Node node = family.root();
        for (int i = 0; i < options.length; i++) {
            int o = 0;
            while (node.takeOff(rest, plan.surfaceOf[i][o])) {
                o++;
            }
            options[i] = o;
            node = node.child(plan.surfaceOf[i][o]);
        }
        return options;
    }

    private static Node child(Node node, Node[] children, int surface) {
        if (children[surface] == null) {
            children[surface] = node.child(surface);
        }
        return children[surface];
    }

    /** The index of options that keep all rules. */
    BigInteger indexOf(int[] options) {
        BigInteger index = BigInteger.ZERO;
        Node node = family.root();
        for (int i = 0; i < options.length; i++) {
            Node[] children = new Node[plan.surfaces.size()];
            for (int o = 0; o < options[i]; o++) {
                index = index.add(child(node, children, plan.surfaceOf[i][o]).count());
            }
            node = child(node, children, plan.surfaceOf[i][options[i]]);
        }
        return index;
    }

    /** All options from an index below the total on, one after the other. */
    Iterator<int[]> from(BigInteger index) {
        return new Walk(at(index));
    }

    /** Steps from one variation to the next, keeping the nodes on its way. */
    private final class Walk implements Iterator<int[]> {
        private final Deque<Node> nodes = new ArrayDeque<>();
        private final int[] options;
        private boolean more = true;

        Walk(int[] start) {
            options = start;
            nodes.push(family.root());
            for (int i = 0; i < options.length; i++) {
                nodes.push(nodes.element().child(plan.surfaceOf[i][options[i]]));
            }
        }

        @Override
        public boolean hasNext() {
            return more;
        }

        @Override
        public int[] next() {
            if (!more) {
                throw new NoSuchElementException("there are no more variations");
            }
            int[] now = options.clone();
            more = advance();
            return now;
        }

        private boolean advance() {
            for (int i = options.length - 1; i >= 0; i--) {
                nodes.pop();
                if (enter(i, options[i] + 1)) {
                    for (int j = i + 1; j < options.length; j++) {
                        if (!enter(j, 0)) {
                            throw new IllegalStateException("a counted completion is missing");
                        }
                    }
                    return true;
                }
            }
            return false;
        }

        /** Takes a stroke's first option from one on that can be completed. */
        private boolean enter(int stroke, int from) {
            for (int o = from; o < plan.surfaceOf[stroke].length; o++) {
                Node child = nodes.element().child(plan.surfaceOf[stroke][o]);
                if (child.isAlive()) {
                    nodes.push(child);
                    options[stroke] = o;
                    return true;
                }
            }
            return false;
        }
    }
}
