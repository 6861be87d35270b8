package org.kitweft.ui.search;

import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Session;

/** What can be done with a recipe that was found: from one session to the next. */
public final class Keeping {
    private Keeping() {}

    /**
     * The recipe in the grid. Pins belong to the strokes of a sticking: they stay only where the
     * letters do.
     */
    public static Session taken(Session now, Recipe recipe, Role role) {
        boolean sameLetters = letters(now.recipe()).equals(letters(recipe));
        Session base = sameLetters ? now : now.fresh(recipe.sticking());
        return base.with(recipe).with(role);
    }

    private static List<Optional<Letter>> letters(Recipe recipe) {
        return recipe.sticking().strokes().stream()
                .map(stroke -> stroke.struck().map(struck -> struck.letter()))
                .toList();
    }

    /**
     * The recipe as one more item of the lesson. It is not opened: an item that is open stays so.
     *
     * @throws IllegalArgumentException if the lesson is full
     */
    public static Session kept(
            Session now, String title, Recipe recipe, Role role, String remarks) {
        LessonItem item = new LessonItem(title, role, recipe, now.tempo(), List.of(), remarks);
        Lesson lesson = now.lesson().withItem(item);
        return now.with(lesson, now.item());
    }
}
