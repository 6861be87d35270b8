package org.kitweft.groove;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * A part of a phrase before it is woven.
 *
 * @param role what it is for
 * @param recipe what its groove is woven from; a number of bars of its own is dropped: the
 *     section's counts
 * @param bars how many bars it lasts, 1 to {@value Groove#MAX_BARS}: a groove with a longer cycle
 *     is cut, one with a shorter cycle comes round
 */
public record PlannedSection(Role role, Recipe recipe, int bars) {
    public PlannedSection {
        Objects.requireNonNull(role, "role");
        recipe = recipe.withBars(OptionalInt.empty());
        Groove.checkBars(bars);
    }

    /** Weaves the section. */
    public Section weave() {
        return new Section(role, recipe.withBars(OptionalInt.of(bars)).weave());
    }

    /** The same for another role. */
    public PlannedSection with(Role other) {
        return new PlannedSection(other, recipe, bars);
    }

    /** The same woven from another recipe. */
    public PlannedSection with(Recipe other) {
        return new PlannedSection(role, other, bars);
    }

    /** The same lasting another number of bars. */
    public PlannedSection withBars(int other) {
        return new PlannedSection(role, recipe, other);
    }
}
