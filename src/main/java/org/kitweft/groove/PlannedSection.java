package org.kitweft.groove;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * A part of a phrase before it is woven.
 *
 * @param role what it is for
 * @param recipe what its groove is woven from; the recipe's own number of bars does not count here
 * @param bars how many bars it lasts, 1 to {@value Groove#MAX_BARS}: a groove with a longer cycle
 *     is cut, one with a shorter cycle comes round
 */
public record PlannedSection(Role role, Recipe recipe, int bars) {
    public PlannedSection {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(recipe, "recipe");
        Groove.checkBars(bars);
    }

    /** Weaves the section. */
    public Section weave() {
        return new Section(role, recipe.withBars(OptionalInt.of(bars)).weave());
    }
}
