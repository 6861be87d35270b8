package org.kitweft.score.model;

import java.util.Objects;

/**
 * A few letters under the staff: a sticking letter, a counting syllable, a key name.
 *
 * @param tick what it stands under, in ticks from the start of its bar
 * @param text what it says
 * @param grace small letters before it, one for each grace note; empty if there are none
 */
public record Label(long tick, String text, String grace) {
    public Label {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(grace, "grace");
    }
}
