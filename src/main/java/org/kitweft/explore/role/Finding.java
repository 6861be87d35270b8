package org.kitweft.explore.role;

import java.util.Optional;

/**
 * How far a groove has a feature.
 *
 * @param value 0 not at all, 1 wholly
 * @param detail what shows it, for people; may be empty
 */
record Finding(double value, String detail) {
    Finding {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(
                    "a feature's value is 0 to 1, not %s".formatted(value));
        }
    }

    static Optional<Finding> of(double value) {
        return Optional.of(new Finding(value, ""));
    }

    static Optional<Finding> of(double value, String detail) {
        return Optional.of(new Finding(value, detail));
    }

    /** Where the question makes no sense for the groove's meter or kit. */
    static Optional<Finding> none() {
        return Optional.empty();
    }
}
