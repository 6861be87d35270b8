package org.kitweft.sound;

import java.util.List;
import java.util.OptionalInt;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/** Short ways to phrases for the tests of sound. */
public final class Phrases {
    private Phrases() {}

    /** A sticking on the five-piece set, in its plainest voicing. */
    public static Recipe recipe(String sticking, Grid grid) {
        return Recipe.plain(Sticking.parse(sticking), BuiltInKits.load("five-piece")).with(grid);
    }

    /** A sticking in sixteenths of 4/4, as many bars as it takes. */
    public static Phrase of(String sticking) {
        return of(sticking, Grid.SIXTEENTHS);
    }

    /** A sticking on a grid, as many bars as it takes. */
    public static Phrase of(String sticking, Grid grid) {
        return Phrase.of(recipe(sticking, grid).weave());
    }

    /** A sticking in sixteenths of 4/4 for so many bars. */
    public static Phrase of(String sticking, int bars) {
        return Phrase.of(recipe(sticking, Grid.SIXTEENTHS).withBars(OptionalInt.of(bars)).weave());
    }

    /** A sticking whose letters strike these sounds: {@code "R=ride", "L=snare"}. */
    public static Groove on(String sticking, String... soundsByLetter) {
        Recipe recipe = recipe(sticking, Grid.SIXTEENTHS);
        for (String text : soundsByLetter) {
            Letter letter = Letter.valueOf(text.substring(0, 1));
            recipe =
                    recipe.with(
                            recipe.voicing()
                                    .with(
                                            letter,
                                            recipe.voicing()
                                                    .letter(letter)
                                                    .orElseThrow()
                                                    .withPath(
                                                            List.of(
                                                                    recipe.kit()
                                                                            .find(
                                                                                    text.substring(
                                                                                            2))))));
        }
        return recipe.weave();
    }

    /** Two sections one after the other. */
    public static Phrase then(Groove time, Groove fill) {
        return new Phrase(List.of(new Section(Role.TIME, time), new Section(Role.FILL, fill)));
    }
}
