package org.kitweft.cli;

import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import org.kitweft.explore.Choices;
import org.kitweft.explore.Counts;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Tempo;

/** All that is said about a groove: heading, grid, conflicts, counts. */
final class GrooveText {
    private GrooveText() {}

    /** The text, its lines ended by {@code \n}. */
    static String of(Groove groove, Tempo tempo, Symbols symbols) {
        StringBuilder text = new StringBuilder();
        text.append(groove.sticking().text()).append("\n");
        text.append(GrooveHeading.of(groove, tempo, symbols)).append("\n\n");
        text.append(GridText.of(groove, symbols));
        if (groove.conflicts().isEmpty()) {
            text.append("No conflicts: it can be played as written.\n");
        } else {
            text.append("Conflicts:\n");
            groove.conflicts().forEach(c -> text.append("  ").append(c.line()).append("\n"));
        }
        if (!groove.comesRound()) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "It comes round after %,d bars; these are the first %d.\n",
                            groove.cycleBars(),
                            groove.bars()));
        }
        text.append(counts(groove));
        return text.toString();
    }

    /** Two lines, or nothing if a letter has nothing to choose from: then a conflict says so. */
    private static String counts(Groove groove) {
        Choices choices =
                Choices.usual(groove.sticking(), groove.kit(), groove.voicing(), List.of());
        if (!choices.letters().containsAll(groove.sticking().letters())) {
            return "";
        }
        Counts counts = Counts.of(groove.sticking(), choices);
        return "Stickings of %s with %s: %s. Ways to play this one on this kit, one sound a surface:\n%s with each letter on one sound, %s with each stroke on its own.\n"
                .formatted(
                        number(BigInteger.valueOf(counts.strokes()), "stroke"),
                        number(BigInteger.valueOf(choices.letters().size()), "letter"),
                        grouped(counts.stickings()),
                        grouped(counts.onePlacePerLetter()),
                        grouped(counts.placePerStroke()));
    }

    private static String number(BigInteger count, String what) {
        return grouped(count) + " " + what + (count.equals(BigInteger.ONE) ? "" : "s");
    }

    /** A number in groups of three digits; a long one roughly. */
    private static String grouped(BigInteger count) {
        int most = 21;
        String digits = count.toString();
        return digits.length() <= most
                ? exact(count)
                : "about %s.%s * 10^%d"
                        .formatted(digits.charAt(0), digits.substring(1, 3), digits.length() - 1);
    }

    /** A number in groups of three digits, whole. */
    static String exact(BigInteger count) {
        return String.format(Locale.ROOT, "%,d", count);
    }
}
