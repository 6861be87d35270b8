package org.kitweft.ui.session;

import java.util.Objects;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Stretch;

/**
 * How it is played, as far as that is undone like other edits. Immutable.
 *
 * @param mix level, place, mute and solo of each part
 * @param stretch which bars are played, and at which feel
 * @param practice how the tempo goes from loop to loop, and what drops out
 */
public record Playing(Mix mix, Stretch stretch, PracticeChoices practice) {
    /** All bars, as written, at a steady tempo. */
    public static final Playing FIRST =
            new Playing(Mix.DEFAULT, Stretch.WHOLE, PracticeChoices.FIRST);

    public Playing {
        Objects.requireNonNull(mix, "mix");
        Objects.requireNonNull(stretch, "stretch");
        Objects.requireNonNull(practice, "practice");
    }

    /** The same with another mix. */
    public Playing with(Mix other) {
        return new Playing(other, stretch, practice);
    }

    /** The same with other bars, or another feel. */
    public Playing with(Stretch other) {
        return new Playing(mix, other, practice);
    }

    /** The same with another way to practise. */
    public Playing with(PracticeChoices other) {
        return new Playing(mix, stretch, other);
    }
}
