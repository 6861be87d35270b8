package org.kitweft.explore.search;

import java.util.Objects;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.groove.Recipe;

/**
 * A recipe that serves a role.
 *
 * @param recipe it weaves without conflict
 * @param fit how well it serves, and why
 * @param difficulty how hard it is
 */
public record Serving(Recipe recipe, RoleFit fit, Difficulty difficulty) {
    public Serving {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(fit, "fit");
        Objects.requireNonNull(difficulty, "difficulty");
    }
}
