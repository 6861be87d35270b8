package org.kitweft.explore.trellis;

import java.util.BitSet;
import java.util.Optional;
import org.kitweft.kit.Limb;

/** Tells of one variation whether it keeps all rules, and if not what breaks them. */
final class Check {
    private Check() {}

    /** The first fault, in words; empty if all rules are kept. */
    static Optional<String> fault(Plan plan, int[] options) {
        int[] surfaces = new int[options.length];
        BitSet used = new BitSet();
        for (int i = 0; i < options.length; i++) {
            surfaces[i] = plan.surfaceOf[i][options[i]];
            used.set(surfaces[i]);
        }
        int passes = plan.limits.loop() ? 2 : 1;
        int[] places = {-1, -1, -1, -1};
        for (int i = 0; i < passes * options.length; i++) {
            int stroke = i % options.length;
            Kind kind = plan.kinds[stroke];
            for (int slot = 0; slot < kind.limbs().length; slot++) {
                int limb = kind.limbs()[slot];
                if (places[limb] >= 0
                        && !kind.moves().get(slot).allows(places[limb], surfaces[stroke])) {
                    return Optional.of(
                            "the %s cannot come from %s to %s for stroke %d"
                                    .formatted(
                                            Limb.values()[limb].words(),
                                            plan.surfaces.get(places[limb]).id(),
                                            plan.surfaces.get(surfaces[stroke]).id(),
                                            plan.played.get(stroke).index() + 1));
                }
            }
            for (int limb : kind.limbs()) {
                places[limb] = surfaces[stroke];
            }
            int right = places[Limb.RIGHT_HAND.ordinal()];
            int left = places[Limb.LEFT_HAND.ordinal()];
            if (right >= 0 && left >= 0 && !plan.uncrossed(right, left)) {
                return Optional.of(
                        "the hands cross at stroke %d"
                                .formatted(plan.played.get(stroke).index() + 1));
            }
        }
        int different = used.cardinality();
        return different < plan.limits.least() || different > plan.limits.most()
                ? Optional.of("it uses %d different surfaces".formatted(different))
                : Optional.empty();
    }
}
