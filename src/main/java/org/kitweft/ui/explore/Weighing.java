package org.kitweft.ui.explore;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.explore.role.Feature;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.groove.Role;

/**
 * What counts for a role, as the user weighs it. A setting of the window, no part of the lesson;
 * undo leaves it alone. For one thread.
 */
public final class Weighing {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private RoleWeights weights = RoleWeights.DEFAULT;

    /** Is called after each change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Is called no more. */
    void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** The weights of now. */
    public RoleWeights weights() {
        return weights;
    }

    /** Other weights from now on. */
    public void use(RoleWeights other) {
        if (!other.equals(weights)) {
            weights = other;
            listeners.forEach(Runnable::run);
        }
    }

    /** Changes one weight, −1 to 1. */
    void weigh(Role role, Feature feature, double weight) {
        if (weights.of(role, feature) != weight) {
            use(weights.with(role, feature, weight));
        }
    }

    /** A weight in words. */
    static String words(double weight) {
        double size = Math.abs(weight);
        if (size < 0.05) {
            return "not at all";
        }
        String much = size < 0.4 ? "a little" : size < 0.75 ? "some" : "much";
        return weight > 0 ? much : much + ", against";
    }
}
