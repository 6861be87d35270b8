package org.kitweft.cli;

import java.util.Locale;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;

/**
 * A phrase as text: of each section what it is for, its bars, and its grid until it comes round.
 */
final class PhraseText {
    private PhraseText() {}

    /** The text, its lines ended by {@code \n}. */
    static String of(Phrase phrase, Tempo tempo, Symbols symbols) {
        StringBuilder text = new StringBuilder();
        Groove first = phrase.sections().get(0).groove();
        text.append(first.sticking().text()).append("\n");
        int bar = 1;
        for (Section section : phrase.sections()) {
            Groove groove = section.groove();
            int last = bar + groove.bars() - 1;
            String role = section.role().id();
            text.append("\n")
                    .append(role.substring(0, 1).toUpperCase(Locale.ROOT))
                    .append(role.substring(1))
                    .append(bar == last ? ", bar " + bar : ", bars %d to %d".formatted(bar, last))
                    .append("\n")
                    .append(GrooveHeading.of(groove, tempo, symbols))
                    .append("\n\n");
            int round = (int) Math.min(groove.bars(), groove.cycleBars());
            text.append(GridText.of(groove.bars(1, round), symbols));
            groove.conflicts()
                    .forEach(c -> text.append("  Conflict: ").append(c.line()).append("\n"));
            bar = last + 1;
        }
        return text.toString();
    }
}
