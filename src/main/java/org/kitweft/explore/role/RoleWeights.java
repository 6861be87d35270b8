package org.kitweft.explore.role;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.kitweft.groove.Role;

/**
 * How much each feature counts for each role: above 0 it speaks for the role, below 0 its absence
 * does, 0 or no entry leaves it out. The defaults are our own choice, no source. Immutable.
 *
 * @param weights for each role its features, −1 to 1
 */
public record RoleWeights(Map<Role, Map<Feature, Double>> weights) {

    /** Where nothing is said. */
    public static final RoleWeights DEFAULT =
            new RoleWeights(
                    Map.of(
                            Role.TIME,
                            Map.ofEntries(
                                    Map.entry(Feature.STEADY_EIGHTHS, 1.0),
                                    Map.entry(Feature.STEADY_BEATS, 0.8),
                                    Map.entry(Feature.BACK_BEAT, 1.0),
                                    Map.entry(Feature.LOW_ON_ONE, 0.5),
                                    Map.entry(Feature.REPEATS, 0.6),
                                    Map.entry(Feature.SYNCOPATED, -0.3),
                                    Map.entry(Feature.TRAVELS_DOWN, -0.5),
                                    Map.entry(Feature.ROUND_THE_KIT, -0.6),
                                    Map.entry(Feature.ENDS_ON_MARK, -0.3),
                                    Map.entry(Feature.SPACE, -0.3)),
                            Role.FILL,
                            Map.ofEntries(
                                    Map.entry(Feature.TRAVELS_DOWN, 1.0),
                                    Map.entry(Feature.ROUND_THE_KIT, 1.0),
                                    Map.entry(Feature.DENSE, 0.6),
                                    Map.entry(Feature.GROWS, 0.6),
                                    Map.entry(Feature.ENDS_ON_MARK, 0.6),
                                    Map.entry(Feature.STEADY_EIGHTHS, -1.0),
                                    Map.entry(Feature.BACK_BEAT, -0.4),
                                    Map.entry(Feature.REPEATS, -0.4)),
                            Role.PUNCH,
                            Map.ofEntries(
                                    Map.entry(Feature.ACCENTS_OFF_BEAT, 1.0),
                                    Map.entry(Feature.SYNCOPATED, 0.7),
                                    Map.entry(Feature.TOGETHER, 0.8),
                                    Map.entry(Feature.MARKS_WITH_LOW, 1.0),
                                    Map.entry(Feature.STRONG, 0.7),
                                    Map.entry(Feature.SPACE, 0.7),
                                    Map.entry(Feature.STEADY_EIGHTHS, -0.6),
                                    Map.entry(Feature.STEADY_BEATS, -0.4),
                                    Map.entry(Feature.ROUND_THE_KIT, -0.3))));

    public RoleWeights {
        Map<Role, Map<Feature, Double>> copy = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            Map<Feature, Double> own = new EnumMap<>(Feature.class);
            own.putAll(weights.getOrDefault(role, Map.of()));
            own.forEach((feature, weight) -> check(role, feature, weight));
            copy.put(role, Collections.unmodifiableMap(own));
        }
        weights = Collections.unmodifiableMap(copy);
    }

    private static void check(Role role, Feature feature, double weight) {
        if (!(weight >= -1 && weight <= 1)) {
            throw new IllegalArgumentException(
                    "weight of %s for %s: expected -1 to 1, not %s"
                            .formatted(feature.id(), role.id(), weight));
        }
    }

    /** The weight of a feature for a role, 0 where nothing is said. */
    public double of(Role role, Feature feature) {
        return weights.get(role).getOrDefault(feature, 0.0);
    }

    /** The same with one weight changed. */
    public RoleWeights with(Role role, Feature feature, double weight) {
        Map<Role, Map<Feature, Double>> changed = new EnumMap<>(weights);
        Map<Feature, Double> own = new EnumMap<>(Feature.class);
        own.putAll(weights.get(role));
        own.put(feature, weight);
        changed.put(role, own);
        return new RoleWeights(changed);
    }
}
