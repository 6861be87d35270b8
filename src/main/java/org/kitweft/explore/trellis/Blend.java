package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * For each stroke from one on and each state before it, the ways to complete the variation: one
 * table for each choice of regions, times its weight. What a beginning has struck picks the choices
 * whose numbers are added up. Safe for use by several threads.
 */
final class Blend {
    /** Digits of so many numbers still add up in a long, with what is carried. */
    static final int MOST_CHOICES = 30_000;

    private static final long DIGIT = (1L << Wide.DIGIT_BITS) - 1;

    final Ground ground;

    /** How many strokes have been played before. */
    final int from;

    final boolean narrow;

    /** For each choice its rows. */
    private final List<Passage> passages;

    /**
     * For each choice its numbers: layer after layer from the first stroke on, in each the digits
     * from the lowest on, of each digit all rows. The highest digit has the sign.
     */
    private final long[][] numbers;

    /** How many rows each choice has. */
    private final int[] sizes;

    /** For each layer how many digits come before it. */
    private final int[] before;

    private final Map<IntBuffer, Held> known = new ConcurrentHashMap<>();
    private final Held all;

    /**
     * Counts.
     *
     * @param choices of regions for all limbs of the ground's chain, and their weights
     * @param passages for each of the choices
     * @param from strokes played before
     * @param ends in a loop, for each limb of the chain where it may strike last
     */
    Blend(
            Ground ground,
            List<Regions.Weighted> choices,
            List<Passage> passages,
            int from,
            BitSet @Nullable [] ends,
            boolean narrow) {
        this.ground = ground;
        this.passages = passages;
        this.from = from;
        this.narrow = narrow;
        before = before(ground.chain.kinds, choices, from, narrow);
        numbers = new long[choices.size()][];
        sizes = new int[numbers.length];
        IntStream each = IntStream.range(0, numbers.length);
        (numbers.length >= Family.PARALLEL_FROM ? each.parallel() : each)
                .forEach(
                        i -> {
                            Passage passage = passages.get(i);
                            sizes[i] = passage.size();
                            numbers[i] = new long[before[before.length - 1] * sizes[i]];
                            long weight = choices.get(i).weight().longValueExact();
                            fill(passage, numbers[i], weight, ends);
                        });
        all = new Held(IntStream.range(0, numbers.length).toArray());
    }

    /** For each layer how many digits come before it, and how many there are in all. */
    private static int[] before(
            Kind[] kinds, List<Regions.Weighted> choices, int from, boolean narrow) {
        int layers = kinds.length + 1 - from;
        int[] places = new int[layers];
        Arrays.fill(places, 1);
        double bits = weightBits(choices);
        for (int j = layers - 1; j >= 0 && !narrow; j--) {
            places[j] = (int) (bits / Wide.DIGIT_BITS) + 1;
            int breadth = j == 0 ? 1 : kinds[from + j - 1].breadth();
            bits += Math.log(Math.max(1, breadth)) / Math.log(2);
        }
        int[] before = new int[layers + 1];
        for (int j = 0; j < layers; j++) {
            before[j + 1] = before[j] + places[j];
        }
        return before;
    }

    private static int weightBits(List<Regions.Weighted> choices) {
        int bits = 1;
        for (Regions.Weighted choice : choices) {
            bits = Math.max(bits, choice.weight().bitLength() + 1);
        }
        return bits;
    }

    /** Bytes that the numbers of so many rows take. */
    static double bytes(Plan plan, double rows, boolean narrow) {
        double places = narrow ? 1 : plan.bound().bitLength() / 2.0 / Wide.DIGIT_BITS + 1;
        return rows * places * (plan.kinds.length + 1) * Long.BYTES;
    }

    private void fill(Passage passage, long[] mine, long weight, BitSet @Nullable [] ends) {
        int size = passage.size();
        int layers = before.length - 1;
        int last = before[layers - 1] * size;
        for (int row = 0; row < size; row++) {
            boolean fits = ends == null || passage.isIn(row, ends);
            mine[last + row] = fits ? weight : 0;
        }
        for (int j = layers - 2; j >= 0; j--) {
            int read = before[j + 1] * size;
            int write = before[j] * size;
            int given = before[j + 2] - before[j + 1];
            for (int p = 0; p < given; p++) {
                passage.addUp(from + j, mine, read + p * size, write + p * size);
            }
            carry(mine, write, size, before[j + 1] - before[j]);
        }
    }

    /** Makes all digits but the highest proper ones; what is over goes to the next. */
    private static void carry(long[] numbers, int at, int size, int places) {
        for (int x = at; x < at + (places - 1) * size; x++) {
            numbers[x + size] += numbers[x] >> Wide.DIGIT_BITS;
            numbers[x] &= DIGIT;
        }
    }

    /** Before anything has been struck. */
    Held all() {
        return all;
    }

    /** Bytes it takes, near enough: sums may come to as much as what they are made of. */
    long bytes() {
        long bytes = 0;
        for (long[] each : numbers) {
            bytes += 16L * each.length;
        }
        return bytes;
    }

    /** What has been struck so far: the choices of regions that hold it. */
    final class Held {
        private final int[] choices;

        /** For each kind and surface what is held after such a stroke. */
        private final AtomicReferenceArray<@Nullable Held> next;

        /** The choices' numbers added up, once that is worth while. */
        private volatile @Nullable Sums sums;

        private int asked;

        private Held(int[] choices) {
            this.choices = choices;
            next = new AtomicReferenceArray<>(ground.kinds * ground.surfaces);
        }

        /** What is held after a stroke. */
        Held after(int stroke, int surface, int state) {
            int at = ground.kindOf[stroke] * ground.surfaces + surface;
            Held known = next.get(at);
            if (known == null) {
                known = holding(state);
                next.set(at, known);
            }
            return known;
        }

        /** The same if it is there, or who asks has asked often. */
        private @Nullable Held afterOften(int stroke, int surface, int state) {
            Held known = next.get(ground.kindOf[stroke] * ground.surfaces + surface);
            return known == null && ++asked > before.length ? after(stroke, surface, state) : known;
        }

        /** With the choices that hold where the limbs stand. */
        private Held holding(int state) {
            int[] held = new int[choices.length];
            int count = 0;
            for (int i : choices) {
                if (passages.get(i).row(state) >= 0) {
                    held[count++] = i;
                }
            }
            if (count == held.length) {
                return this;
            }
            int[] mine = Arrays.copyOf(held, count);
            return known.computeIfAbsent(IntBuffer.wrap(mine), any -> new Held(mine));
        }

        /** The ways to go on after a stroke, narrow. */
        long lowAfter(int stroke, int surface, int state) {
            Held held = afterOften(stroke, surface, state);
            return (held == null ? this : held).low(stroke + 1, state);
        }

        /** Takes the ways to go on after a stroke off a rest, if there is as much. */
        boolean takeOffAfter(Rest rest, int stroke, int surface, int state) {
            Held held = afterOften(stroke, surface, state);
            return (held == null ? this : held).takeOff(rest, stroke + 1, state);
        }

        /** The ways to go on from a state within those choices that hold it, narrow. */
        long low(int played, int state) {
            Sums ready = ready();
            if (ready != null && ready.rowOf[state] >= 0) {
                return ready.numbers[before[played - from] * ready.size + ready.rowOf[state]];
            }
            long sum = 0;
            for (int i : choices) {
                int row = passages.get(i).row(state);
                sum += row < 0 ? 0 : numbers[i][before[played - from] * sizes[i] + row];
            }
            return sum;
        }

        /** The ways to go on. */
        BigInteger get(int played, int state) {
            if (narrow) {
                return BigInteger.valueOf(low(played, state));
            }
            long[] sum = new long[places(played)];
            addUp(played, state, sum);
            return Wide.number(sum);
        }

        /** Takes the ways to go on off a rest, if there is as much. */
        boolean takeOff(Rest rest, int played, int state) {
            Sums ready = ready();
            int places = places(played);
            if (ready != null && ready.rowOf[state] >= 0) {
                int at = before[played - from] * ready.size + ready.rowOf[state];
                return rest.takeOff(ready.numbers, at, ready.size, places);
            }
            long[] sum = rest.room(places);
            addUp(played, state, sum);
            return rest.takeOff(sum, 0, 1, places);
        }

        /** Adds up in proper digits: what there is to go on is 0 or more. */
        private void addUp(int played, int state, long[] into) {
            int places = places(played);
            for (int i : choices) {
                int row = passages.get(i).row(state);
                int at = before[played - from] * sizes[i] + row;
                for (int p = 0; p < places && row >= 0; p++) {
                    into[p] += numbers[i][at];
                    at += sizes[i];
                }
            }
            Wide.carry(into, places);
        }

        private int places(int played) {
            return before[played - from + 1] - before[played - from];
        }

        /** The sums, if they are there, or who asks has asked often. */
        private @Nullable Sums ready() {
            Sums ready = sums;
            if (ready == null && ++asked > 2 * before.length) {
                ready = new Sums(choices);
                sums = ready;
            }
            return ready;
        }
    }

    /** The numbers of some choices added up, for the states that all of them hold. */
    private final class Sums {
        /** For each state its row; negative for none. */
        private final int[] rowOf;

        /** How many rows there are. */
        private final int size;

        /** In proper digits, in the order of each choice's. */
        private final long[] numbers;

        Sums(int[] choices) {
            rowOf = new int[ground.size];
            int count = 0;
            for (int state = 0; state < rowOf.length; state++) {
                boolean everywhere = true;
                for (int i = 0; i < choices.length && everywhere; i++) {
                    everywhere = passages.get(choices[i]).row(state) >= 0;
                }
                rowOf[state] = everywhere ? count++ : -1;
            }
            size = count;
            numbers = new long[before[before.length - 1] * size];
            for (int i : choices) {
                add(i);
            }
            for (int j = 0; j + 1 < before.length; j++) {
                carry(numbers, before[j] * size, size, before[j + 1] - before[j]);
            }
        }

        private void add(int choice) {
            long[] theirs = Blend.this.numbers[choice];
            for (int state = 0; state < rowOf.length; state++) {
                if (rowOf[state] >= 0) {
                    int read = passages.get(choice).row(state);
                    for (int at = rowOf[state]; at < numbers.length; at += size) {
                        numbers[at] += theirs[read];
                        read += sizes[choice];
                    }
                }
            }
        }
    }
}
