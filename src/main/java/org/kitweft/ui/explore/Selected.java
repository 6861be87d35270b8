package org.kitweft.ui.explore;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.explore.reach.Move;
import org.kitweft.explore.reach.Travel;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.ui.count.Numbers;

/**
 * What is told of one groove beside the list: how it serves, how far it goes, what limits it.
 * Immutable.
 *
 * @param fit how it serves as time, fill and punch
 * @param way how far each limb travels and which move limits the tempo, in words
 */
record Selected(RoleFit fit, String way) {

    /** A variation. */
    static Selected of(Possibilities possibilities, Variation variation, RoleWeights weights) {
        Groove groove = possibilities.recipe(variation).weave();
        Travel travel = possibilities.travel(variation.sounds());
        String number = Numbers.brief(variation.index().add(BigInteger.ONE));
        return new Selected(
                RoleFit.of(groove, weights),
                "No. %s travels %s; %s"
                        .formatted(number, way(travel), limit(travel, possibilities)));
    }

    /** The groove on the kit, whichever it is. */
    static Selected of(Groove groove, RoleWeights weights) {
        return new Selected(
                RoleFit.of(groove, weights),
                "This is what is on the kit. Choose a variation for its travel and tempo.");
    }

    private static String way(Travel travel) {
        List<String> limbs = new ArrayList<>();
        travel.cm()
                .forEach(
                        (limb, cm) ->
                                limbs.add("%s %d cm".formatted(limb.shortName(), Math.round(cm))));
        return limbs.isEmpty() ? "nowhere" : String.join(", ", limbs);
    }

    private static String limit(Travel travel, Possibilities possibilities) {
        Optional<Move> move = travel.limit();
        return move.isEmpty() || travel.tempoCeiling().isEmpty()
                ? "no move limits its tempo."
                : "to about %d bpm, limited by %s."
                        .formatted(
                                travel.tempoCeiling().getAsInt(), words(move.get(), possibilities));
    }

    /** {@code LH: Snare to Floor tom, strokes 5 to 6}. */
    static String words(Move move, Possibilities possibilities) {
        Kit kit = possibilities.recipe().kit();
        Grid grid = possibilities.recipe().grid();
        int size = possibilities.recipe().sticking().size();
        int from = step(move.start(), grid, size);
        int to = step(move.start() + move.ticks(), grid, size);
        String way =
                move.from().surface().equals(move.to().surface())
                        ? surface(kit, move.from()) + " again"
                        : surface(kit, move.from()) + " to " + surface(kit, move.to());
        return "%s: %s, strokes %d to %d%s"
                .formatted(
                        move.limb().shortName(), way, from + 1, to + 1, to <= from ? " again" : "");
    }

    /**
     * The step of the sticking that sounds nearest to a time: swing moves steps off their place.
     */
    private static int step(long ticks, Grid grid, int size) {
        long near = ticks / grid.stepTicks();
        long best = near;
        for (long step = Math.max(0, near - 1); step <= near + 1; step++) {
            if (distance(step, ticks, grid) < distance(best, ticks, grid)) {
                best = step;
            }
        }
        int bar = grid.stepsPerBar();
        int period = grid.overTheBar() || size <= bar ? size : (size + bar - 1) / bar * bar;
        return (int) (best % period);
    }

    private static long distance(long step, long ticks, Grid grid) {
        return Math.abs(grid.sounding(step * grid.stepTicks(), grid.stepsPerBeat()) - ticks);
    }

    private static String surface(Kit kit, SoundName sound) {
        return kit.surfaceOf(sound).name();
    }
}
