package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.Limb;

/**
 * Plays through a chain within bounds, from every state at once: the ways stand in a matrix with a
 * row for each state. Made for many small bounds.
 */
final class Passage {
    final Ground ground;
    final boolean narrow;

    /** For each row its state. */
    private final int[] states;

    /** For each state its row; negative if it is not within the bounds. */
    private final int[] rows;

    /** For each kind, once asked for, where each row leads. */
    private final @Nullable Steps[] steps;

    /** For each kind, once asked for, what leads to each row. */
    private final @Nullable Steps[] origins;

    /** Steps between rows. */
    private static final class Steps {
        /** Those of a row stand from {@code first[row]} to before {@code first[row + 1]}. */
        private final int[] first;

        private final int[] to;

        /** The most that one row has, 1 at least. */
        private final int most;

        /**
         * For each row how many rows from it on lead to rows that follow one another too: one sum
         * for all of them is faster than one for each.
         */
        private final int[] run;

        Steps(int[] first, int[] to) {
            this.first = first;
            this.to = to;
            int highest = 1;
            for (int row = 0; row + 1 < first.length; row++) {
                highest = Math.max(highest, first[row + 1] - first[row]);
            }
            most = highest;
            run = new int[first.length - 1];
            for (int row = run.length - 1; row >= 0; row--) {
                run[row] = row + 1 < run.length && follows(row) ? run[row + 1] + 1 : 1;
            }
        }

        /** Whether the next row leads to the rows next to those that this one leads to. */
        private boolean follows(int row) {
            int count = first[row + 1] - first[row];
            boolean follows = count > 0 && first[row + 2] - first[row + 1] == count;
            for (int i = first[row]; i < first[row + 1] && follows; i++) {
                follows = to[i + count] == to[i] + 1;
            }
            return follows;
        }
    }

    Passage(Ground ground, Bounds bounds, boolean narrow) {
        this.ground = ground;
        this.narrow = narrow;
        rows = new int[ground.size];
        int[] found = new int[ground.size];
        int count = 0;
        for (int state = 0; state < rows.length; state++) {
            boolean within = true;
            for (int d = 0; d < ground.surface.length && within; d++) {
                within = bounds.holds(d, ground.surface[d][state]);
            }
            rows[state] = Ground.NONE;
            if (within) {
                found[count] = state;
                rows[state] = count++;
            }
        }
        states = Arrays.copyOf(found, count);
        steps = new @Nullable Steps[ground.kinds];
        origins = new @Nullable Steps[ground.kinds];
    }

    /** How many rows there are. */
    int size() {
        return states.length;
    }

    /** The state of a row. */
    int state(int row) {
        return states[row];
    }

    /** The row of a state; negative if it is not within the bounds. */
    int row(int state) {
        return rows[state];
    }

    /** The surface that a limb of the chain stands on in a row. */
    int surface(int row, int d) {
        return ground.surface[d][states[row]];
    }

    /** The rows in which each limb stands on one of these surfaces. */
    int[] rowsIn(BitSet[] surfaces) {
        int[] all = new int[states.length];
        int count = 0;
        for (int row = 0; row < all.length; row++) {
            if (isIn(row, surfaces)) {
                all[count++] = row;
            }
        }
        return Arrays.copyOf(all, count);
    }

    /** Whether each limb stands on one of these surfaces in a row. */
    boolean isIn(int row, BitSet[] surfaces) {
        boolean fits = true;
        for (int d = 0; d < surfaces.length && fits; d++) {
            int at = surface(row, d);
            fits = at >= 0 && surfaces[d].get(at);
        }
        return fits;
    }

    /** Each of these rows is reached in one way from itself: where a passage begins. */
    Wide standing(int[] ends) {
        long[] last = new long[states.length * ends.length];
        for (int c = 0; c < ends.length; c++) {
            last[ends[c] * ends.length + c] = 1;
        }
        return Wide.of(last);
    }

    /** Where all strokes lead, and some rows: what counts depend on. */
    Shape shape(int[]... some) {
        int length = 1;
        for (int kind = 0; kind < steps.length; kind++) {
            length += states.length + steps(kind).first[states.length];
        }
        for (int[] each : some) {
            length += each.length + 1;
        }
        int[] numbers = new int[length];
        int at = 0;
        numbers[at++] = states.length;
        for (int kind = 0; kind < steps.length; kind++) {
            Steps mine = steps(kind);
            System.arraycopy(mine.first, 1, numbers, at, states.length);
            at += states.length;
            System.arraycopy(mine.to, 0, numbers, at, mine.first[states.length]);
            at += mine.first[states.length];
        }
        for (int[] each : some) {
            numbers[at++] = each.length;
            System.arraycopy(each, 0, numbers, at, each.length);
            at += each.length;
        }
        return new Shape(numbers);
    }

    /** Without loop, the row in which no limb has struck. */
    int[] nowhere() {
        int[] stands = new int[Limb.values().length];
        Arrays.fill(stands, -1);
        return new int[] {rows[ground.state(stands)]};
    }

    /** Each row is an end of its own: where a passage without loop ends. */
    Wide anywhere() {
        long[] last = new long[states.length];
        Arrays.fill(last, 1);
        return Wide.of(last);
    }

    /**
     * The ways from each row before one stroke to given rows before a later one: a column for each
     * of these; in carried digits.
     *
     * @param to one past the last stroke; beyond the chain's last it goes round
     */
    Wide between(int from, int to, int[] ends) {
        Wide next = standing(ends);
        Wide spare = null;
        double bits = 1;
        for (int j = to - 1; j >= from; j--) {
            Steps leads = steps(ground.kindOf[j % ground.kindOf.length]);
            double grows = Math.log(leads.most) / Math.log(2);
            if (!narrow && bits + grows >= Long.SIZE - 2) {
                next = next.carried();
                bits = Wide.DIGIT_BITS;
                spare = null;
            }
            Wide here = add(leads, next, spare, ends.length);
            spare = next;
            next = here;
            bits += grows;
        }
        return narrow ? next : next.carried();
    }

    /**
     * The ways from each row before each stroke to the end, in carried digits.
     *
     * @param last the ways at the end, for each row and column
     * @param from the first layer to make; those before it are missing
     * @param to one past the last layer to keep
     */
    @Nullable Wide[] back(Wide last, int columns, int from, int to) {
        int strokes = ground.kindOf.length;
        @Nullable Wide[] layers = new @Nullable Wide[to];
        Wide next = last;
        Wide spare = null;
        for (int j = strokes; j >= from; j--) {
            if (j < strokes) {
                Wide here = add(steps(ground.kindOf[j]), next, spare, columns);
                // A layer that is not kept lends its memory to the one after the next.
                spare = narrow && j + 1 >= to && j + 1 < strokes ? next : null;
                next = narrow ? here : here.carried();
            }
            if (j < to) {
                layers[j] = next;
            }
        }
        return layers;
    }

    /**
     * Adds up, for each row before a stroke, what stands at the rows to which it leads.
     *
     * @param read where the number of the first row after the stroke stands
     * @param write where to put that of the first row before it
     */
    void addUp(int stroke, long[] numbers, int read, int write) {
        Steps leads = steps(ground.kindOf[stroke]);
        for (int row = 0; row < states.length; row++) {
            long sum = 0;
            for (int i = leads.first[row]; i < leads.first[row + 1]; i++) {
                sum += numbers[read + leads.to[i]];
            }
            numbers[write + row] = sum;
        }
    }

    /** One stroke on: the ways to each row after it, in carried digits like those before it. */
    Wide forth(int stroke, Wide before, int columns) {
        Wide here = add(origins(ground.kindOf[stroke]), before, null, columns);
        return narrow ? here : here.carried();
    }

    private Wide add(Steps leads, Wide from, @Nullable Wide spare, int columns) {
        Wide here = spare == null ? Wide.zero(from.digits[0].length, from.places()) : spare;
        for (int p = 0; p < from.places(); p++) {
            for (int row = 0; row < states.length; row += leads.run[row]) {
                sum(from.digits[p], leads, row, here.digits[p], columns);
            }
        }
        return here;
    }

    private Steps steps(int kind) {
        Steps known = steps[kind];
        if (known == null) {
            known = within(kind);
            steps[kind] = known;
        }
        return known;
    }

    private Steps within(int kind) {
        int[] first = new int[states.length + 1];
        int[] to = new int[16];
        int count = 0;
        for (int row = 0; row < states.length; row++) {
            int[] leads = ground.leads(kind, states[row]);
            if (count + leads.length > to.length) {
                to = Arrays.copyOf(to, 2 * (count + leads.length));
            }
            for (int state : leads) {
                if (rows[state] != Ground.NONE) {
                    to[count++] = rows[state];
                }
            }
            first[row + 1] = count;
        }
        return new Steps(first, Arrays.copyOf(to, count));
    }

    private Steps origins(int kind) {
        Steps known = origins[kind];
        if (known == null) {
            known = turned(steps(kind));
            origins[kind] = known;
        }
        return known;
    }

    private Steps turned(Steps steps) {
        int[] first = new int[states.length + 1];
        int count = steps.first[states.length];
        for (int i = 0; i < count; i++) {
            first[steps.to[i] + 1]++;
        }
        for (int row = 0; row < states.length; row++) {
            first[row + 1] += first[row];
        }
        int[] at = first.clone();
        int[] to = new int[count];
        for (int row = 0; row < states.length; row++) {
            for (int i = steps.first[row]; i < steps.first[row + 1]; i++) {
                to[at[steps.to[i]]++] = row;
            }
        }
        return new Steps(first, to);
    }

    /** Adds up the rows to which one leads, up to four at once: fewer ways to memory and back. */
    private static void sum(long[] from, Steps leads, int row, long[] into, int columns) {
        int[] to = leads.to;
        int end = leads.first[row + 1];
        int i = leads.first[row];
        int write = row * columns;
        int length = leads.run[row] * columns;
        int rest = (end - i) % 4;
        int one = rest > 0 ? to[i] * columns : 0;
        int two = rest > 1 ? to[i + 1] * columns : 0;
        int three = rest > 2 ? to[i + 2] * columns : 0;
        switch (rest) {
            case 0 -> Arrays.fill(into, write, write + length, 0);
            case 1 -> System.arraycopy(from, one, into, write, length);
            case 2 -> {
                for (int x = 0; x < length; x++) {
                    into[write + x] = from[one + x] + from[two + x];
                }
            }
            default -> {
                for (int x = 0; x < length; x++) {
                    into[write + x] = from[one + x] + from[two + x] + from[three + x];
                }
            }
        }
        for (i += rest; i < end; i += 4) {
            int first = to[i] * columns;
            int second = to[i + 1] * columns;
            int third = to[i + 2] * columns;
            int fourth = to[i + 3] * columns;
            for (int x = 0; x < length; x++) {
                into[write + x] +=
                        from[first + x] + from[second + x] + from[third + x] + from[fourth + x];
            }
        }
    }
}
