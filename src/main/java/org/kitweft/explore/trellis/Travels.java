package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.kitweft.explore.reach.Move;
import org.kitweft.explore.reach.Travel;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/** The moves of a variation. */
final class Travels {
    private Travels() {}

    static Travel of(Plan plan, List<SoundName> sounds) {
        if (sounds.size() != plan.played.size()) {
            throw new IllegalArgumentException(
                    "%d sounds: expected one for each of %d strokes"
                            .formatted(sounds.size(), plan.played.size()));
        }
        Set<Limb> striking = EnumSet.noneOf(Limb.class);
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < plan.played.size(); i++) {
            for (Limb limb : plan.played.get(i).limbs()) {
                striking.add(limb);
                Plan.Moment before = plan.before(i, limb);
                if (before.stroke() >= 0) {
                    moves.add(move(plan, sounds, limb, before, i));
                }
            }
        }
        return Travel.of(striking, moves);
    }

    private static Move move(
            Plan plan, List<SoundName> sounds, Limb limb, Plan.Moment before, int stroke) {
        Surface from = plan.recipe.kit().surfaceOf(sounds.get(before.stroke()));
        Surface to = plan.recipe.kit().surfaceOf(sounds.get(stroke));
        return new Move(
                limb,
                sounds.get(before.stroke()),
                sounds.get(stroke),
                plan.timing.sounding(plan.played.get(before.stroke()).index()),
                before.ticks(),
                from.distanceTo(to),
                plan.model.ceiling(limb, from, to, before.ticks(), plan.meter()));
    }
}
