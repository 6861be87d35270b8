package org.kitweft.explore.ladder;

import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.kitweft.groove.Recipe;

/**
 * One thing that differs between a plain recipe and the chosen one. Changes touch different parts
 * of a recipe, so that any of them can be made before any other, but for what one needs.
 *
 * @param words what changes, for people
 * @param needs the number of the change that has to come before it, if one has to
 * @param apply makes the change
 */
record Change(String words, OptionalInt needs, UnaryOperator<Recipe> apply) {
    Change {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(needs, "needs");
        Objects.requireNonNull(apply, "apply");
    }
}
