package org.kitweft.explore.reach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Surface;

/**
 * How far each limb travels and how fast that can go: an estimate, see {@link ReachModel#CAVEAT}.
 *
 * @param cm for each limb that strikes, the way it travels in centimetres
 * @param limit the move that limits the tempo, the first where several do; empty if no limb strikes
 *     twice
 */
public record Travel(Map<Limb, Double> cm, Optional<Move> limit) {
    public Travel {
        Map<Limb, Double> copy = new EnumMap<>(Limb.class);
        copy.putAll(cm);
        cm = Collections.unmodifiableMap(copy);
    }

    /**
     * Adds up moves.
     *
     * @param striking the limbs that strike; those without a move travel 0 cm
     * @param moves in time
     */
    public static Travel of(Iterable<Limb> striking, List<Move> moves) {
        Map<Limb, Double> cm = new EnumMap<>(Limb.class);
        striking.forEach(limb -> cm.put(limb, 0.0));
        moves.forEach(move -> cm.merge(move.limb(), move.cm(), Double::sum));
        return new Travel(cm, moves.stream().min(Comparator.comparingDouble(Move::ceiling)));
    }

    /**
     * All that a groove's limbs do: strokes, doublings and layers. A limb on two surfaces at one
     * instant, which is a conflict, is possible at no tempo.
     *
     * @param loop whether each limb also goes from its last hit back to its first
     */
    public static Travel of(Groove groove, boolean loop, ReachModel model) {
        Map<Limb, List<Hit>> byLimb = new EnumMap<>(Limb.class);
        for (Hit hit : groove.hits()) {
            byLimb.computeIfAbsent(hit.limb(), any -> new ArrayList<>()).add(hit);
        }
        List<Move> moves = new ArrayList<>();
        byLimb.forEach(
                (limb, hits) -> {
                    for (int i = 1; i < hits.size(); i++) {
                        moves.add(move(groove, hits.get(i - 1), hits.get(i), 0, model));
                    }
                    if (loop) {
                        Hit last = hits.get(hits.size() - 1);
                        moves.add(move(groove, last, hits.get(0), groove.ticks(), model));
                    }
                });
        moves.sort(Comparator.comparingLong(Move::start).thenComparing(Move::limb));
        return of(byLimb.keySet(), moves);
    }

    private static Move move(Groove groove, Hit from, Hit to, long later, ReachModel model) {
        Kit kit = groove.kit();
        Surface start = kit.surfaceOf(from.sound());
        Surface end = kit.surfaceOf(to.sound());
        long ticks = to.start() + later - from.start();
        return new Move(
                from.limb(),
                from.sound(),
                to.sound(),
                from.start(),
                ticks,
                start.distanceTo(end),
                model.ceiling(from.limb(), start, end, ticks, groove.grid().meter()));
    }

    /** The way of all limbs together, in centimetres. */
    public double totalCm() {
        return cm.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * The highest whole tempo at which each move is possible, in beats a minute; may lie beyond
     * what a {@link org.kitweft.groove.Tempo} holds. Empty where nothing limits it.
     */
    public OptionalInt tempoCeiling() {
        return limit.filter(move -> move.ceiling() < Integer.MAX_VALUE)
                .map(move -> OptionalInt.of((int) Math.floor(move.ceiling())))
                .orElse(OptionalInt.empty());
    }
}
