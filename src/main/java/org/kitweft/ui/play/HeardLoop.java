package org.kitweft.ui.play;

import org.kitweft.groove.Practice;

/**
 * The loop that is heard just now.
 *
 * @param number from 1
 * @param loop its tempo, and whether it sounds
 */
public record HeardLoop(int number, Practice.Loop loop) {

    /** For people: {@code loop 3 at 66}. */
    public String text() {
        return "loop %d at %d%s"
                .formatted(number, loop.tempo().beatsPerMinute(), loop.sounds() ? "" : ", silent");
    }
}
