package org.kitweft.ui.window;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What to mind before loud sound or long practice. Exposure times by the formula of NIOSH,
 * Publication No. 98-126 (1998), section 1.1: 85 dBA for eight hours, half the time for each 3 dB
 * more.
 */
final class CareNotes {
    private static final double LIMIT_DBA = 85;
    private static final double MINUTES_AT_LIMIT = 480;
    private static final double EXCHANGE_RATE = 3;

    private CareNotes() {}

    /** Minutes a day at a level, by the formula. */
    static double minutes(double levelDba) {
        return MINUTES_AT_LIMIT / Math.pow(2, (levelDba - LIMIT_DBA) / EXCHANGE_RATE);
    }

    /** The notes as plain text. */
    static String text() {
        String table =
                IntStream.iterate(85, level -> level <= 109, level -> level + 6)
                        .mapToObj(level -> "    %d dBA:  %s".formatted(level, time(minutes(level))))
                        .collect(Collectors.joining("\n"));
        return """
        Ears

        Start low: Kitweft does so each time it starts. Raise the level only until it is \
        comfortable. Take the headphones off between exercises, and rest the ears after loud \
        playing. Ringing ears or dull hearing mean: stop.

        How long a day, by the formula of NIOSH 98-126 (85 dBA for 8 hours, half the time for \
        each 3 dB more):

        %s

        This is a limit for working days over a working life, not a promise of safety for \
        anybody. A drum set played hard is louder than most people think: wear protection.

        Hands, arms, back

        Warm up slowly. Pause every half hour at the latest; change exercise, seat and grip. Raise \
        the tempo only while everything stays loose. Stop on pain, tingling or numbness; do not \
        practise through it.

        Local rules and a clinician or audiologist come first.
        """
                .formatted(table);
    }

    private static String time(double minutes) {
        if (minutes >= 60) {
            return minutes % 60 == 0
                    ? String.format(Locale.ENGLISH, "%.0f hours", minutes / 60)
                    : String.format(Locale.ENGLISH, "%.1f hours", minutes / 60);
        }
        return minutes >= 1
                ? String.format(Locale.ENGLISH, "%.0f minutes", Math.floor(minutes))
                : String.format(Locale.ENGLISH, "%.0f seconds", Math.floor(minutes * 60));
    }
}
