package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kitweft.kit.Limb;

/** A cost in whole millionths for all strokes and moves of a plan, asked for once. */
final class Priced {
    /** Dearer than anything, and still far from overflow when added to. */
    static final long NEVER = Long.MAX_VALUE / 4;

    private static final double UNIT = 1e6;
    private static final double MOST = 1e9;

    /** For each stroke and option. */
    final long[][] options;

    /** For each stroke and surface its cheapest option; {@link #NEVER} where it has none. */
    final long[][] surfaces;

    /** For each stroke and each of its limbs the moves to it; empty for a first stroke. */
    final long[][][][] moves;

    final boolean anyNegative;

    Priced(Plan plan, Cost cost) {
        int n = plan.played.size();
        int m = plan.surfaces.size();
        options = new long[n][];
        surfaces = new long[n][m];
        moves = new long[n][][][];
        boolean negative = false;
        Map<List<Object>, long[][]> known = new HashMap<>();
        for (int i = 0; i < n; i++) {
            Played played = plan.played.get(i);
            options[i] = new long[played.sounds().size()];
            Arrays.fill(surfaces[i], NEVER);
            for (int o = 0; o < options[i].length; o++) {
                options[i][o] = whole(cost.stroke(played.index(), played.sounds().get(o)));
                int surface = plan.surfaceOf[i][o];
                surfaces[i][surface] = Math.min(surfaces[i][surface], options[i][o]);
                negative |= options[i][o] < 0;
            }
            moves[i] = new long[played.limbs().size()][][];
            for (int slot = 0; slot < moves[i].length; slot++) {
                Limb limb = played.limbs().get(slot);
                Plan.Moment before = plan.before(i, limb);
                moves[i][slot] =
                        before.stroke() < 0
                                ? new long[0][]
                                : known.computeIfAbsent(
                                        List.of(limb, before.ticks()),
                                        any -> moves(plan, cost, limb, before.ticks()));
            }
        }
        anyNegative =
                negative
                        || known.values().stream()
                                .flatMap(Arrays::stream)
                                .flatMapToLong(Arrays::stream)
                                .anyMatch(price -> price < 0);
    }

    private static long[][] moves(Plan plan, Cost cost, Limb limb, long ticks) {
        int m = plan.surfaces.size();
        long[][] all = new long[m][m];
        for (int from = 0; from < m; from++) {
            for (int to = 0; to < m; to++) {
                all[from][to] =
                        whole(
                                cost.move(
                                        limb,
                                        plan.surfaces.get(from),
                                        plan.surfaces.get(to),
                                        ticks));
            }
        }
        return all;
    }

    private static long whole(double price) {
        if (!(Math.abs(price) <= MOST)) {
            throw new IllegalArgumentException(
                    "cost %s: expected a number between minus and plus a billion".formatted(price));
        }
        return Math.round(price * UNIT);
    }

    /** What it costs one of a stroke's limbs to come from a surface; 0 from nowhere. */
    long move(int stroke, int slot, int from, int to) {
        return from < 0 || moves[stroke][slot].length == 0 ? 0 : moves[stroke][slot][from][to];
    }

    /** The least it costs to come to a surface from another one; 0 at least. */
    long entry(int surface) {
        long least = NEVER;
        for (long[][][] stroke : moves) {
            for (long[][] slot : stroke) {
                for (int from = 0; from < slot.length; from++) {
                    least = from == surface ? least : Math.min(least, slot[from][surface]);
                }
            }
        }
        return Math.max(0, least);
    }
}
