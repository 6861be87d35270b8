package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * For each stroke from one on and each state of {@link SurfaceUse} that can be reached by then, the
 * ways to complete the variation. Has its own numbers for these states, in the order in which they
 * come within reach, so that an earlier stroke has a shorter layer. Immutable.
 */
final class Completions {
    private final int from;
    private final Kind[] kinds;
    private final Map<Integer, Integer> starts = new HashMap<>();
    private final Map<Kind, Steps> steps = new HashMap<>();
    private final Wide[] layers;
    private final boolean narrow;

    /**
     * The steps by strokes of one kind: those of state i stand from {@code first[i]} to before
     * {@code first[i + 1]}.
     */
    private static final class Steps {
        private final int[] first;

        /** For each state the surfaces to which steps lead, as bits. */
        private final long[] surfaces;

        /** Where each step leads, by surface. */
        private final int[] to;

        /** Which of the kind's targets each step strikes. */
        private final byte[] target;

        Steps(int[] first) {
            this.first = first;
            surfaces = new long[first.length - 1];
            to = new int[first[first.length - 1]];
            target = new byte[to.length];
        }
    }

    /**
     * Counts.
     *
     * @param from strokes played before
     * @param starts the states in which they may leave the limbs
     * @param ends in a loop, by limb where it may strike last
     */
    Completions(
            SurfaceUse use,
            int from,
            List<Integer> starts,
            BitSet @Nullable [] ends,
            boolean narrow) {
        this.from = from;
        this.narrow = narrow;
        kinds = use.chain.kinds;
        Reached reached = new Reached(use);
        starts.forEach(start -> this.starts.put(start, reached.number(start)));
        List<Kind> ahead = Arrays.stream(kinds, from, kinds.length).distinct().toList();
        List<SurfaceUse.Steps> found = ahead.stream().map(use::steps).toList();
        int[] sizes = new int[kinds.length + 1 - from];
        sizes[0] = reached.size;
        int before = 0;
        for (int j = 1; j < sizes.length; j++) {
            int until = reached.size;
            for (int i = before; i < until; i++) {
                for (SurfaceUse.Steps kind : found) {
                    for (int next : kind.from(reached.states[i])) {
                        if (next != SurfaceUse.NONE) {
                            reached.number(next);
                        }
                    }
                }
            }
            before = until;
            sizes[j] = reached.size;
        }
        int leaving = sizes[Math.max(0, sizes.length - 2)];
        ahead.forEach(
                kind -> steps.put(kind, steps(use.steps(kind), kind.targets(), reached, leaving)));
        layers = new Wide[sizes.length];
        layers[sizes.length - 1] = Wide.of(last(use, reached, ends));
        fill(sizes);
    }

    /** Numbers states as they come within reach. */
    private static final class Reached {
        private int[] states = new int[64];
        private int[] numbers;
        private int size;

        Reached(SurfaceUse use) {
            numbers = new int[Math.max(64, use.size())];
        }

        int number(int state) {
            if (state >= numbers.length) {
                numbers = Arrays.copyOf(numbers, Math.max(state + 1, 2 * numbers.length));
            }
            // One more than the number, so that 0 says: none yet.
            if (numbers[state] == 0) {
                if (size == states.length) {
                    states = Arrays.copyOf(states, 2 * size);
                }
                states[size++] = state;
                numbers[state] = size;
            }
            return numbers[state] - 1;
        }
    }

    private static Steps steps(SurfaceUse.Steps kind, int[] targets, Reached reached, int count) {
        int[] first = new int[count + 1];
        for (int i = 0; i < count; i++) {
            int found = 0;
            for (int next : kind.from(reached.states[i])) {
                found += next == SurfaceUse.NONE ? 0 : 1;
            }
            first[i + 1] = first[i] + found;
        }
        Steps steps = new Steps(first);
        int at = 0;
        for (int i = 0; i < count; i++) {
            int[] row = kind.from(reached.states[i]);
            for (int t = 0; t < row.length; t++) {
                if (row[t] != SurfaceUse.NONE) {
                    steps.surfaces[i] |= 1L << targets[t];
                    steps.target[at] = (byte) t;
                    steps.to[at++] = reached.number(row[t]);
                }
            }
        }
        return steps;
    }

    private static long[] last(SurfaceUse use, Reached reached, BitSet @Nullable [] ends) {
        long[] last = new long[reached.size];
        for (int i = 0; i < last.length; i++) {
            boolean fits = use.enough(reached.states[i]);
            for (int d = 0; d < use.chain.limbs.length && fits && ends != null; d++) {
                fits = ends[use.chain.limbs[d]].get(use.surface(reached.states[i], d));
            }
            last[i] = fits ? 1 : 0;
        }
        return last;
    }

    private void fill(int[] sizes) {
        double bits = 1;
        Wide next = layers[sizes.length - 1];
        for (int j = sizes.length - 2; j >= 0; j--) {
            Kind kind = kinds[from + j];
            double grows = Math.log(Math.max(1, kind.breadth())) / Math.log(2);
            if (!narrow && bits + grows >= Long.SIZE - 2) {
                next = next.carried();
                bits = Wide.DIGIT_BITS;
            }
            Wide here = Wide.zero(sizes[j], next.places());
            boolean alike = kind.breadth() == kind.targets().length;
            for (int p = 0; p < next.places(); p++) {
                if (alike) {
                    add(steps.get(kind), next.digits[p], here.digits[p]);
                } else {
                    add(steps.get(kind), kind.sounds(), next.digits[p], here.digits[p]);
                }
            }
            layers[j] = here;
            next = here;
            bits += grows;
        }
    }

    private static void add(Steps steps, long[] next, long[] here) {
        for (int i = 0; i < here.length; i++) {
            long sum = 0;
            for (int at = steps.first[i]; at < steps.first[i + 1]; at++) {
                sum += next[steps.to[at]];
            }
            here[i] = sum;
        }
    }

    private static void add(Steps steps, int[] sounds, long[] next, long[] here) {
        for (int i = 0; i < here.length; i++) {
            long sum = 0;
            for (int at = steps.first[i]; at < steps.first[i + 1]; at++) {
                sum += sounds[steps.target[at]] * next[steps.to[at]];
            }
            here[i] = sum;
        }
    }

    /** Its own number of a state in which the strokes before may leave the limbs. */
    int start(int state) {
        return starts.get(state);
    }

    /** The ways to go on, narrow. */
    long low(int played, int number) {
        return layers[played - from].low(number);
    }

    /** The ways to go on. */
    BigInteger get(int played, int number) {
        return layers[played - from].get(number);
    }

    /** Takes the ways to go on off a rest; where they are more, leaves that and answers false. */
    boolean takeOff(Rest rest, int played, int number) {
        return rest.takeOff(layers[played - from], number);
    }

    /** Where a stroke on a surface leads; {@link SurfaceUse#NONE} if it may not. */
    int next(int played, int number, int surface) {
        Steps mine = steps.get(kinds[played]);
        long surfaces = mine.surfaces[number];
        long bit = 1L << surface;
        // Targets go from left to right, and so do the steps.
        return (surfaces & bit) == 0
                ? SurfaceUse.NONE
                : mine.to[mine.first[number] + Long.bitCount(surfaces & (bit - 1))];
    }

    /** Bytes it takes, near enough. */
    long bytes() {
        long bytes = 0;
        for (Wide layer : layers) {
            bytes += 8L * layer.places() * layer.digits[0].length;
        }
        for (Steps each : steps.values()) {
            bytes += 12L * each.first.length + 5L * each.to.length;
        }
        return bytes;
    }
}
