package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Plays through a layout from every state at once. Made for many small layouts: states that cross
 * are left out beforehand, and the ways stand in a matrix with a row for each state.
 */
final class Passage {
    private final Layout layout;
    private final boolean narrow;
    private final Map<Kind, int[][]> rows = new HashMap<>();
    private final Map<Kind, int[][]> origins = new HashMap<>();

    /** For each state its number among the valid ones; negative if hands cross there. */
    private final int[] number;

    private final int valid;

    Passage(Layout layout, boolean narrow) {
        this.layout = layout;
        this.narrow = narrow;
        number = new int[layout.states];
        int count = 0;
        for (int state = 0; state < number.length; state++) {
            number[state] = layout.valid[state] ? count++ : -1;
        }
        valid = count;
    }

    /** The row of a valid state. */
    int row(int state) {
        return number[state];
    }

    /**
     * The ways from each state before one stroke to given states before a later one: a column for
     * each of these.
     */
    Wide between(Kind[] kinds, int from, int to, int[] ends) {
        Wide next = standing(ends);
        Wide spare = null;
        double bits = 1;
        for (int j = to - 1; j >= from; j--) {
            int[][] leads = rows.computeIfAbsent(kinds[j], this::rows);
            double grows = Math.log(most(leads)) / Math.log(2);
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

    /** Each of these states is reached in one way from itself: where a passage begins. */
    Wide standing(int[] ends) {
        long[] last = new long[valid * ends.length];
        for (int c = 0; c < ends.length; c++) {
            last[number[ends[c]] * ends.length + c] = 1;
        }
        return Wide.of(last);
    }

    /**
     * The ways from each state before each stroke to given states after the last, in carried
     * digits: one layer for each stroke, and that after all.
     */
    Wide[] back(Kind[] kinds, int[] ends) {
        Wide[] layers = new Wide[kinds.length + 1];
        layers[kinds.length] = standing(ends);
        for (int j = kinds.length - 1; j >= 0; j--) {
            int[][] leads = rows.computeIfAbsent(kinds[j], this::rows);
            Wide here = add(leads, layers[j + 1], null, ends.length);
            layers[j] = narrow ? here : here.carried();
        }
        return layers;
    }

    /** One stroke on: the ways to each state after it, in carried digits like those before it. */
    Wide forth(Kind kind, Wide before, int columns) {
        Wide here = add(origins.computeIfAbsent(kind, this::origins), before, null, columns);
        return narrow ? here : here.carried();
    }

    private Wide add(int[][] leads, Wide from, @Nullable Wide spare, int columns) {
        Wide here = spare == null ? Wide.zero(from.digits[0].length, from.places()) : spare;
        for (int p = 0; p < from.places(); p++) {
            for (int row = 0; row < valid; row++) {
                sum(from.digits[p], leads[row], here.digits[p], row * columns, columns);
            }
        }
        return here;
    }

    /** For each valid state those from which a kind leads to it, as often as it does. */
    private int[][] origins(Kind kind) {
        int[][] leads = rows.computeIfAbsent(kind, this::rows);
        int[] counts = new int[valid];
        for (int[] lead : leads) {
            for (int next : lead) {
                counts[next]++;
            }
        }
        int[][] back = new int[valid][];
        Arrays.setAll(back, state -> new int[counts[state]]);
        for (int state = 0; state < valid; state++) {
            for (int next : leads[state]) {
                back[next][--counts[next]] = state;
            }
        }
        return back;
    }

    private static int most(int[][] leads) {
        int most = 1;
        for (int[] lead : leads) {
            most = Math.max(most, lead.length);
        }
        return most;
    }

    /** For each valid state those that a kind leads to, as often as it has sounds there. */
    private int[][] rows(Kind kind) {
        int[][] leads = new int[valid][];
        int[] lead = new int[kind.breadth()];
        int[] at = {0, 0};
        layout.steps(kind)
                .forEach(
                        (state, next, target) -> {
                            for (; at[0] < number[state]; at[0]++) {
                                leads[at[0]] = Arrays.copyOf(lead, at[1]);
                                at[1] = 0;
                            }
                            for (int i = 0; i < kind.sounds()[target]; i++) {
                                lead[at[1]++] = number[next];
                            }
                        });
        for (; at[0] < valid; at[0]++) {
            leads[at[0]] = Arrays.copyOf(lead, at[1]);
            at[1] = 0;
        }
        return leads;
    }

    /** Adds up rows, up to four at once: fewer ways to memory and back. */
    private static void sum(long[] from, int[] leads, long[] into, int write, int columns) {
        int i = leads.length % 4;
        int one = i > 0 ? leads[0] * columns : 0;
        int two = i > 1 ? leads[1] * columns : 0;
        int three = i > 2 ? leads[2] * columns : 0;
        switch (i) {
            case 0 -> Arrays.fill(into, write, write + columns, 0);
            case 1 -> System.arraycopy(from, one, into, write, columns);
            case 2 -> {
                for (int x = 0; x < columns; x++) {
                    into[write + x] = from[one + x] + from[two + x];
                }
            }
            default -> {
                for (int x = 0; x < columns; x++) {
                    into[write + x] = from[one + x] + from[two + x] + from[three + x];
                }
            }
        }
        for (; i < leads.length; i += 4) {
            int first = leads[i] * columns;
            int second = leads[i + 1] * columns;
            int third = leads[i + 2] * columns;
            int fourth = leads[i + 3] * columns;
            for (int x = 0; x < columns; x++) {
                into[write + x] +=
                        from[first + x] + from[second + x] + from[third + x] + from[fourth + x];
            }
        }
    }
}
