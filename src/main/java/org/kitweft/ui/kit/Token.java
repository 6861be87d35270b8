package org.kitweft.ui.kit;

import java.util.Optional;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Target;

/**
 * A letter's token, on a surface or put aside.
 *
 * @param letter whose token it is
 * @param target for which of its strokes
 * @param turn its place in the path, from 0
 * @param turns how many places the path has
 * @param limb who plays it
 * @param sound what it strikes; empty where it lies aside, because nothing is chosen, or the letter
 *     is tacet or not in the sticking
 * @param why it lies aside, in a word or two; empty on a surface
 */
record Token(
        Letter letter,
        Target target,
        int turn,
        int turns,
        Limb limb,
        Optional<SoundName> sound,
        String why) {

    /** As it is written: {@code R}, {@code >R} for accents, {@code (R)} for ghost strokes. */
    String text() {
        return switch (target) {
            case ALL -> letter.name();
            case ACCENTS -> ">" + letter;
            case GHOSTS -> "(" + letter + ")";
        };
    }
}
