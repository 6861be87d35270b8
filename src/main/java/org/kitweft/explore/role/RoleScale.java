package org.kitweft.explore.role;

import java.util.EnumSet;
import java.util.Set;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Role;
import org.kitweft.kit.Kit;

/**
 * Scores many grooves of one kit for one role: the value that {@link RoleFit} gives, without its
 * reasons. The kit is looked through once, and only what counts for the role is measured.
 * Immutable.
 */
public final class RoleScale {
    private final KitTraits traits;
    private final Role role;
    private final RoleWeights weights;
    private final Set<Feature> features = EnumSet.noneOf(Feature.class);

    /** A scale for the grooves of a kit. */
    public RoleScale(Kit kit, Role role, RoleWeights weights) {
        this.traits = new KitTraits(kit);
        this.role = role;
        this.weights = weights;
        for (Feature feature : Feature.values()) {
            if (weights.of(role, feature) != 0) {
                features.add(feature);
            }
        }
    }

    /** 0 to 1: exactly {@code RoleFit.of(groove, weights).of(role).value()}. */
    public double of(Groove groove) {
        return RoleFit.score(role, weights, RoleFit.findings(groove, traits, features), traits)
                .value();
    }
}
