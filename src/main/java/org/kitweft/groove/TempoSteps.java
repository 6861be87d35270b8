package org.kitweft.groove;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.pattern.TextFormatException;

/**
 * Tempi to play one after the other, as a teacher writes them for a week: 60, 66, 72.
 *
 * @param tempi in playing order, 1 to {@value #MOST}
 */
public record TempoSteps(List<Tempo> tempi) {
    /** The most steps. */
    public static final int MOST = 100;

    public TempoSteps {
        tempi = List.copyOf(tempi);
        if (tempi.isEmpty() || tempi.size() > MOST) {
            throw new IllegalArgumentException(
                    "%d tempo steps: expected 1 to %d".formatted(tempi.size(), MOST));
        }
    }

    /** From one tempo to another, the last step shortened if need be. */
    public static TempoSteps between(Tempo from, Tempo to, int by) {
        if (by < 1) {
            throw new IllegalArgumentException(
                    "tempo steps by %d: expected 1 or more".formatted(by));
        }
        int direction = Integer.signum(to.beatsPerMinute() - from.beatsPerMinute());
        int way = Math.abs(to.beatsPerMinute() - from.beatsPerMinute());
        List<Tempo> tempi = new ArrayList<>();
        for (int gone = 0; gone < way; gone += by) {
            tempi.add(new Tempo(from.beatsPerMinute() + direction * gone));
        }
        tempi.add(to);
        return new TempoSteps(tempi);
    }

    /**
     * Reads tempi separated by commas or spaces.
     *
     * @throws TextFormatException naming the position and what was expected there
     */
    public static TempoSteps parse(String text) {
        List<Tempo> tempi = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            char next = text.charAt(at);
            if (next == ',' || Character.isWhitespace(next)) {
                at++;
                continue;
            }
            int start = at;
            while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
                at++;
            }
            String number = text.substring(start, at);
            int tempo = number.isEmpty() || number.length() > 3 ? 0 : Integer.parseInt(number);
            if (tempo < Tempo.SLOWEST || tempo > Tempo.FASTEST) {
                throw fault(text, start);
            }
            if (tempi.size() == MOST) {
                throw new TextFormatException(
                        "tempo steps", text, start, "at most %d tempi".formatted(MOST));
            }
            tempi.add(new Tempo(tempo));
        }
        if (tempi.isEmpty()) {
            throw fault(text, text.length());
        }
        return new TempoSteps(tempi);
    }

    private static TextFormatException fault(String text, int at) {
        return new TextFormatException(
                "tempo steps",
                text,
                at,
                "a tempo from %d to %d".formatted(Tempo.SLOWEST, Tempo.FASTEST));
    }

    /** The text that reads back to these steps. */
    public String text() {
        return tempi.stream()
                .map(tempo -> Integer.toString(tempo.beatsPerMinute()))
                .collect(Collectors.joining(", "));
    }
}
