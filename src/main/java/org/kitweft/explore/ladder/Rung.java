package org.kitweft.explore.ladder;

import java.util.Objects;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.groove.Recipe;

/**
 * One step of a ladder, complete: it can be heard, seen and practised by itself.
 *
 * @param recipe what is played on it
 * @param change what is new, for people
 * @param difficulty how hard it is
 */
public record Rung(Recipe recipe, String change, Difficulty difficulty) {
    public Rung {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(difficulty, "difficulty");
    }
}
