package org.kitweft.explore.role;

import java.util.Objects;

/**
 * Why a groove serves a role.
 *
 * @param feature what was looked at
 * @param value how far the groove has it, 0 to 1
 * @param share how much of the score comes of it, 0 to 1; the shares of a score sum to it
 * @param text in plain language
 */
public record Reason(Feature feature, double value, double share, String text) {
    public Reason {
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(text, "text");
    }
}
