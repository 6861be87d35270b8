package org.kitweft.explore.search;

import java.util.List;
import java.util.Objects;
import org.kitweft.groove.Recipe;

/**
 * One way to play a groove.
 *
 * @param recipe it weaves to what was asked for, without conflict
 * @param additions what it needs beyond letters played by their own limbs
 * @param points the effort of the sticking's first pass with its layers: see {@link
 *     org.kitweft.explore.difficulty.Effort}
 */
public record Answer(Recipe recipe, List<Addition> additions, int points) {
    public Answer {
        Objects.requireNonNull(recipe, "recipe");
        additions = List.copyOf(additions);
    }
}
