package org.kitweft.explore.role;

import java.util.List;

/**
 * How well a groove serves one role.
 *
 * @param value 0 not at all, 1 in every respect that counts
 * @param reasons those that count, the largest share first
 */
public record RoleScore(double value, List<Reason> reasons) {
    public RoleScore {
        reasons = List.copyOf(reasons);
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("a score is 0 to 1, not %s".formatted(value));
        }
    }
}
