package org.kitweft.ui.count;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.kitweft.explore.Choices;
import org.kitweft.explore.CountName;
import org.kitweft.explore.Counts;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.session.Session;

/**
 * The counts of a session as lines to read: a number and what it counts. Immutable.
 *
 * @param lines in the order of {@link CountName}
 * @param missing what cannot be counted, in one line; empty if all is well
 */
record CountLines(List<Line> lines, String missing) {
    CountLines {
        lines = List.copyOf(lines);
    }

    /** A number and what it counts. */
    record Line(CountName name, BigInteger number, String words) {}

    static CountLines of(Session session) {
        Sticking sticking = session.recipe().sticking();
        Choices choices = session.choicesInUse();
        try {
            Counts counts = Counts.of(sticking, choices);
            List<Line> lines = new ArrayList<>();
            counts.byName()
                    .forEach(
                            (name, number) ->
                                    lines.add(new Line(name, number, words(name, counts))));
            return new CountLines(lines, "");
        } catch (IllegalArgumentException e) {
            return new CountLines(List.of(), e.getMessage());
        }
    }

    /** Short enough for a line, and with the numbers of strokes at hand. */
    private static String words(CountName name, Counts counts) {
        int n = counts.strokes();
        String strokes = n == 1 ? "1 stroke" : n + " strokes";
        return switch (name) {
            case STICKINGS -> "stickings of " + strokes;
            case ONE_PLACE_PER_LETTER -> "each letter on one sound";
            case PLACE_PER_STROKE -> "each stroke on its own";
            case ANY_STICKING -> "with any sticking";
            case ANY_STICKING_DIFFERENT_SOUND -> "sounding different";
            case ANY_STICKING_UP_TO_START -> "from any start";
            case DIFFERENT_SOUND_UP_TO_START -> "of those different";
            case UNDER_RULES -> "keep your rules";
        };
    }
}
