package org.kitweft.ui.search;

import java.util.Objects;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.groove.Recipe;

/**
 * A row of a list that is heard row by row.
 *
 * @param recipe what is heard
 * @param difficulty how hard it is
 * @param thousandths the figure of its difficulty that is shown, in thousandths of a point a bar
 * @param lead what stands first: a score, a number
 * @param words what there is to say of it
 */
public record Finding(
        Recipe recipe, Difficulty difficulty, long thousandths, String lead, String words) {
    public Finding {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(difficulty, "difficulty");
        Objects.requireNonNull(lead, "lead");
        Objects.requireNonNull(words, "words");
    }

    /** One that shows its whole difficulty. */
    public Finding(Recipe recipe, Difficulty difficulty, String lead, String words) {
        this(recipe, difficulty, difficulty.total(), lead, words);
    }
}
