package org.kitweft.explore.role;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Role;

/**
 * How well a groove serves as time, fill or punch, with reasons. A score is the mean of what the
 * features say, weighed; features that make no sense for the meter or the kit are left out. A
 * groove without hits scores 0.
 *
 * @param scores one for each role
 */
public record RoleFit(Map<Role, RoleScore> scores) {

    public RoleFit {
        Map<Role, RoleScore> copy = new EnumMap<>(Role.class);
        copy.putAll(scores);
        if (copy.size() != Role.values().length) {
            throw new IllegalArgumentException("a role fit has a score for each role");
        }
        scores = Collections.unmodifiableMap(copy);
    }

    /** With the default weights. */
    public static RoleFit of(Groove groove) {
        return of(groove, RoleWeights.DEFAULT);
    }

    /** With weights of one's own. */
    public static RoleFit of(Groove groove, RoleWeights weights) {
        KitTraits kit = new KitTraits(groove.kit());
        Map<Feature, Finding> findings = findings(groove, kit, EnumSet.allOf(Feature.class));
        Map<Role, RoleScore> scores = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            scores.put(role, score(role, weights, findings, kit));
        }
        return new RoleFit(scores);
    }

    /** What a groove shows of some features; nothing where nothing is struck. */
    static Map<Feature, Finding> findings(Groove groove, KitTraits kit, Set<Feature> features) {
        Map<Feature, Finding> findings = new EnumMap<>(Feature.class);
        if (!groove.hits().isEmpty()) {
            Reading reading = new Reading(groove, kit);
            for (Feature feature : features) {
                Optional<Finding> finding = feature.measure(reading);
                finding.ifPresent(found -> findings.put(feature, found));
            }
        }
        return findings;
    }

    /** Features of weight 0 may be among the findings or not: they change nothing. */
    static RoleScore score(
            Role role, RoleWeights weights, Map<Feature, Finding> findings, KitTraits kit) {
        double all =
                findings.keySet().stream()
                        .mapToDouble(feature -> Math.abs(weights.of(role, feature)))
                        .sum();
        List<Reason> reasons = new ArrayList<>();
        findings.forEach(
                (feature, finding) -> {
                    double weight = weights.of(role, feature);
                    double speaks = weight < 0 ? 1 - finding.value() : finding.value();
                    if (Math.abs(weight) * speaks > 0) {
                        reasons.add(
                                new Reason(
                                        feature,
                                        finding.value(),
                                        Math.abs(weight) * speaks / all,
                                        weight < 0
                                                ? feature.absence(kit)
                                                : text(feature, finding, kit)));
                    }
                });
        reasons.sort(
                Comparator.comparingDouble(Reason::share)
                        .reversed()
                        .thenComparing(Reason::feature));
        double value = reasons.stream().mapToDouble(Reason::share).sum();
        return new RoleScore(Math.min(1, value), reasons);
    }

    private static String text(Feature feature, Finding finding, KitTraits kit) {
        return finding.detail().isEmpty()
                ? feature.reason(kit)
                : "%s (%s)".formatted(feature.reason(kit), finding.detail());
    }

    /** The score for a role. */
    public RoleScore of(Role role) {
        return Objects.requireNonNull(scores.get(role));
    }

    /** The role it serves best, the first of equals in the order time, fill, punch. */
    public Role best() {
        return Collections.max(
                List.of(Role.PUNCH, Role.FILL, Role.TIME),
                Comparator.<Role>comparingDouble(role -> of(role).value())
                        .thenComparing(Comparator.reverseOrder()));
    }
}
