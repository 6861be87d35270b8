package org.kitweft.groove;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A meter such as 4/4 or 6/8.
 *
 * <p>The beat is the quarter in x/4; in x/8 it is the dotted quarter where the count divides by
 * three (3/8, 6/8, 9/8, 12/8), else the eighth (5/8, 7/8). Common practice, no source.
 *
 * @param count the upper number, 1 to {@value #MOST}
 * @param unit the lower number, 4 or 8
 */
public record Meter(int count, int unit) {
    /** The highest upper number. */
    public static final int MOST = 32;

    /** 4/4. */
    public static final Meter COMMON = new Meter(4, 4);

    private static final Pattern TEXT = Pattern.compile("\\s*(\\d{1,4})\\s*/\\s*(\\d{1,4})\\s*");

    public Meter {
        if (count < 1 || count > MOST || (unit != 4 && unit != 8)) {
            throw new IllegalArgumentException(
                    "meter %d/%d: expected 1 to %d beats over 4 or 8, as in 4/4 or 6/8"
                            .formatted(count, unit, MOST));
        }
    }

    /**
     * Reads a meter such as {@code 6/8}.
     *
     * @throws IllegalArgumentException if it is none
     */
    public static Meter parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "meter \"%s\": expected two numbers, as in 4/4 or 6/8".formatted(text));
        }
        return new Meter(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    /** Whether a beat has three parts by nature: a dotted quarter. */
    public boolean isCompound() {
        return unit == 8 && count % 3 == 0;
    }

    /** Beats in a bar. */
    public int beats() {
        return isCompound() ? count / 3 : count;
    }

    /** Ticks of a beat. */
    public long beatTicks() {
        long unitTicks = Ticks.PER_QUARTER * 4L / unit;
        return isCompound() ? 3 * unitTicks : unitTicks;
    }

    /** Ticks of a bar. */
    public long barTicks() {
        return beats() * beatTicks();
    }

    /** As written: {@code 6/8}. */
    public String text() {
        return count + "/" + unit;
    }

    @Override
    public String toString() {
        return text();
    }
}
