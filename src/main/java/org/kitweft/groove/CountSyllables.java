package org.kitweft.groove;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Counting aloud: {@code 1 e & a 2 e & a}. Common practice, no source; the table is {@code
 * shared/reference/count-syllables.csv}. Divisions that the trade has no syllables for (5, 7, 12)
 * show the beat and dots.
 */
public final class CountSyllables {
    private CountSyllables() {}

    /** A label for each step of a bar; beats by number, {@code ·} where nothing is said. */
    public static List<String> ofBar(Grid grid) {
        List<String> labels = new ArrayList<>();
        for (int beat = 1; beat <= grid.meter().beats(); beat++) {
            labels.add(Integer.toString(beat));
            labels.addAll(afterTheBeat(grid.stepsPerBeat()));
        }
        return labels;
    }

    private static List<String> afterTheBeat(int stepsPerBeat) {
        return switch (stepsPerBeat) {
            case 2 -> List.of("&");
            case 3 -> List.of("trip", "let");
            case 4 -> List.of("e", "&", "a");
            case 6 -> List.of("ta", "la", "&", "ta", "la");
            case 8 -> List.of("·", "e", "·", "&", "·", "a", "·");
            default -> List.copyOf(Collections.nCopies(stepsPerBeat - 1, "·"));
        };
    }
}
