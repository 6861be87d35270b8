package org.kitweft.explore.role;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    private static final Pattern PART =
            Pattern.compile("(time|fill|punch)\\.([a-z-]+)=(-?\\d{1,9}(?:\\.\\d{1,17})?)");

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

    /**
     * What differs from the defaults as one line, {@code fill.grows=1 time.repeats=-0.5}; empty if
     * nothing does. {@link #parse} reads it.
     */
    public String text() {
        StringJoiner text = new StringJoiner(" ");
        for (Role role : Role.values()) {
            for (Feature feature : Feature.values()) {
                double weight = of(role, feature);
                if (weight != DEFAULT.of(role, feature)) {
                    text.add(role.id() + "." + feature.id() + "=" + plain(weight));
                }
            }
        }
        return text.toString();
    }

    private static String plain(double weight) {
        return weight == Math.rint(weight) ? Long.toString((long) weight) : Double.toString(weight);
    }

    /**
     * The defaults, changed as a text says.
     *
     * @throws IllegalArgumentException naming the part that cannot be read
     */
    public static RoleWeights parse(String text) {
        RoleWeights weights = DEFAULT;
        for (String part : text.strip().split("\\s+", -1)) {
            if (part.isEmpty()) {
                continue;
            }
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                throw new IllegalArgumentException(
                        "weight \"%s\": expected a role, a feature and a number from -1 to 1, as in fill.grows=0.5"
                                .formatted(part));
            }
            weights =
                    weights.with(
                            Role.valueOf(matcher.group(1).toUpperCase(Locale.ROOT)),
                            Feature.of(matcher.group(2)),
                            Double.parseDouble(matcher.group(3)));
        }
        return weights;
    }
}
