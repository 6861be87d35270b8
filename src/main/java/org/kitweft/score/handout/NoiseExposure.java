package org.kitweft.score.handout;

import java.time.Duration;

/**
 * How long a day a level of sound is within the recommended exposure limit of NIOSH Publication No.
 * 98-126 (1998), section 1.1: 85 dBA over 8 hours, half the time for every 3 dB more.
 *
 * <p>An occupational limit, not a promise of safety for anybody.
 */
public final class NoiseExposure {
    private static final double LIMIT_DBA = 85;
    private static final double EXCHANGE_DB = 3;
    private static final double LIMIT_SECONDS = 8 * 3600;

    /** Above this, NIOSH recommends no exposure at all (98-126, section 1.1). */
    public static final int CEILING_DBA = 115;

    private NoiseExposure() {}

    /**
     * The time a day at a level.
     *
     * @param levelDba A-weighted level in dB, 80 to {@value #CEILING_DBA}
     */
    public static Duration perDay(int levelDba) {
        if (levelDba < 80 || levelDba > CEILING_DBA) {
            throw new IllegalArgumentException(
                    "level %d dBA: expected 80 to %d".formatted(levelDba, CEILING_DBA));
        }
        double seconds = LIMIT_SECONDS / Math.pow(2, (levelDba - LIMIT_DBA) / EXCHANGE_DB);
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    /** The time in words, in hours or minutes: {@code 4 h}, {@code 15 min}, {@code 7 min}. */
    static String words(int levelDba) {
        Duration time = perDay(levelDba);
        return time.toMinutes() >= 60 && time.toMinutesPart() == 0
                ? time.toHours() + " h"
                : time.toMinutes() >= 1 ? time.toMinutes() + " min" : time.toSeconds() + " s";
    }
}
