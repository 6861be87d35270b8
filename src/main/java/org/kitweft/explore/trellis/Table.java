package org.kitweft.explore.trellis;

import java.util.BitSet;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * For each stroke of a chain and each state before it, the ways to play on to the end: the trellis.
 *
 * <p>A <i>closed</i> table has one column: the ways that end where they may. In a loop an
 * <i>open</i> table has a column for each end state: the ways that end there. A loop closes where
 * it began, so the columns of those beginnings that fit are added up.
 *
 * <p>Narrow tables hold 64 bits of each number: right as long as no total reaches 2^63, since sums,
 * differences and products then come out right from their lowest 64 bits alone.
 */
final class Table {
    final Layout layout;

    /** End states, one for each column; empty for a closed table. */
    final int[] ends;

    final int columns;
    private final int first;
    private final @Nullable Wide[] layers;

    /**
     * For each stroke, once asked for, where each state leads by each surface; strokes of one kind
     * share it.
     */
    private final AtomicReferenceArray<int @Nullable []> nexts;

    /** For each layer, once asked for, its numbers with their digits together. */
    private final AtomicReferenceArray<long @Nullable []> packed;

    private Table(Layout layout, int[] ends, int columns, int first, @Nullable Wide[] layers) {
        this.layout = layout;
        this.ends = ends;
        this.columns = columns;
        this.first = first;
        this.layers = layers;
        nexts = new AtomicReferenceArray<>(layout.chain.kinds.length);
        packed = new AtomicReferenceArray<>(layers.length);
    }

    /** An open table that keeps its first layers, at least one. */
    static Table open(Layout layout, boolean narrow, int keep) {
        int[] ends = layout.endStates();
        long[] last = new long[layout.states * ends.length];
        for (int c = 0; c < ends.length; c++) {
            last[ends[c] * ends.length + c] = 1;
        }
        return fill(layout, ends, ends.length, last, narrow, 0, keep);
    }

    /**
     * A closed table.
     *
     * @param allowed for each limb where it may end, {@code null} for anywhere
     * @param from the first layer to keep
     * @param keep how many layers to keep, at least one
     */
    static Table closed(
            Layout layout, BitSet @Nullable [] allowed, boolean narrow, int from, int keep) {
        long[] last = new long[layout.states];
        for (int state = 0; state < last.length; state++) {
            boolean fits = allowed == null || layout.endsIn(state, allowed);
            last[state] = layout.valid[state] && fits ? 1 : 0;
        }
        return fill(layout, new int[0], 1, last, narrow, from, keep);
    }

    private static Table fill(
            Layout layout,
            int[] ends,
            int columns,
            long[] last,
            boolean narrow,
            int from,
            int keep) {
        Kind[] kinds = layout.chain.kinds;
        @Nullable Wide[] layers = new @Nullable Wide[Math.min(keep, kinds.length + 1 - from)];
        Wide next = Wide.of(last);
        double bits = 1;
        Wide spare = null;
        keep(layers, kinds.length - from, next);
        for (int j = kinds.length - 1; j >= from; j--) {
            double grows = Math.log(Math.max(1, kinds[j].breadth())) / Math.log(2);
            if (!narrow && bits + grows >= Long.SIZE - 2) {
                next = next.carried();
                bits = Wide.DIGIT_BITS;
            }
            Wide here = add(layout, kinds[j], next, columns, spare);
            // A layer that is not kept lends its memory to the one after the next.
            spare = j + 1 - from < layers.length ? null : next;
            next = here;
            bits += grows;
            keep(layers, j - from, next);
        }
        return new Table(layout, ends, columns, from, layers);
    }

    private static Wide add(
            Layout layout, Kind kind, Wide from, int columns, @Nullable Wide spare) {
        Wide into =
                spare != null && spare.places() == from.places()
                        ? spare.cleared()
                        : Wide.zero(from.digits[0].length, from.places());
        Layout.Steps steps = layout.steps(kind);
        for (int p = 0; p < from.places(); p++) {
            steps.add(from.digits[p], into.digits[p], columns);
        }
        return into;
    }

    /** Where a stroke of the chain on a surface leads from a state; negative if it may not. */
    int next(int stroke, int state, int surface) {
        int[] mine = nexts.get(stroke);
        if (mine == null) {
            mine = layout.nexts(layout.chain.kinds[stroke]);
            nexts.set(stroke, mine);
        }
        return mine[state * layout.places[0].length + surface];
    }

    /** Takes a number off a rest, if there is as much. */
    boolean takeOff(Rest rest, int stroke, int index) {
        long[] mine = packed.get(stroke - first);
        if (mine == null) {
            mine = layer(stroke).packed();
            packed.set(stroke - first, mine);
        }
        int places = mine.length / (layout.states * columns);
        return rest.takeOff(mine, index * places, 1, places);
    }

    private static void keep(@Nullable Wide[] layers, int index, Wide layer) {
        if (index < layers.length) {
            layers[index] = layer;
        }
    }

    /** The layer before a stroke of the chain; the last is after all strokes. */
    Wide layer(int stroke) {
        Wide layer = layers[stroke - first];
        if (layer == null) {
            throw new IllegalStateException("layer %d was not kept".formatted(stroke));
        }
        return layer;
    }

    /** Bytes its numbers take. */
    long bytes() {
        long bytes = 0;
        for (Wide layer : layers) {
            bytes += layer == null ? 0 : 8L * layer.places() * layer.digits[0].length;
        }
        return bytes;
    }
}
