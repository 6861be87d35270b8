package org.kitweft.score.model;

import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * How a cell of the bar (a beat, or several joined) is divided into equal units and what one unit
 * is written as.
 *
 * <p>A cell of two halves (a quarter, an eighth) divides without a tuplet by powers of two; one of
 * three eighths by 1, 3, 6, 12, 24. Any other count is a tuplet of the value that the next smaller
 * natural division has (3:2, 5:4, 6:4, 7:4; 4:3 and 5:3 in a dotted quarter), except that two in
 * the time of three are written as eighths. Common practice, no source.
 *
 * @param cell length of the cell in ticks
 * @param ternary whether the cell is three eighths
 * @param units how many equal units
 * @param normal units of the same value that fill the cell without a tuplet
 * @param value what one unit is written as; for a whole ternary cell the eighth it consists of
 */
record Division(long cell, boolean ternary, int units, int normal, NoteValue value) {

    /** The division of a cell by so many units; {@code whole} is the value of a binary cell. */
    static Division of(long cell, boolean ternary, NoteValue whole, int units) {
        if (ternary) {
            if (units == 2) {
                return new Division(cell, true, 2, 3, NoteValue.EIGHTH);
            }
            int normal = 3 * Integer.highestOneBit(Math.max(1, units / 3));
            NoteValue value = NoteValue.EIGHTH.shorter(Integer.numberOfTrailingZeros(normal / 3));
            return units == 1
                    ? new Division(cell, true, 3, 3, NoteValue.EIGHTH)
                    : new Division(cell, true, units, normal, value);
        }
        int normal = Integer.highestOneBit(units);
        return new Division(
                cell, false, units, normal, whole.shorter(Integer.numberOfTrailingZeros(normal)));
    }

    /** Whether so many units are written without a tuplet. */
    static boolean isNatural(boolean ternary, int units) {
        int base = ternary && units % 3 == 0 ? units / 3 : units;
        return Integer.bitCount(base) == 1 && (!ternary || units == 1 || units % 3 == 0);
    }

    /** The fewest units such that each of these ticks in a cell begins one. */
    static int fewestUnits(long cell, Iterable<Long> ticks) {
        long unit = cell;
        for (long tick : ticks) {
            unit = ArithmeticUtils.gcd(unit, tick);
        }
        return Math.toIntExact(cell / unit);
    }

    boolean isTuplet() {
        return units != normal;
    }

    long unitTicks() {
        return cell / units;
    }

    /**
     * The longest single note, in units, that may stand at a unit and last at most so long. A note
     * off the stronger beats ends where the next stronger beat but one begins, so that the reader
     * sees the beat; inside a tuplet any plain or dotted value goes that needs no rest after it,
     * else a note between two pairs of units ends with its pair.
     */
    int longestNote(int at, int most) {
        int allowed = most;
        if (!isTuplet()) {
            int part = ternary ? units / 3 : units;
            boolean onPart = at % part == 0;
            boolean secondHalf = ternary && 2 * at == units;
            if (!onPart && !secondHalf) {
                int reach = 4 * Integer.lowestOneBit(at);
                allowed = Math.min(most, (at / reach + 1) * reach - at);
            }
        }
        if (isTuplet() && at % 2 == 1 && !isOneNote(most)) {
            allowed = 1;
        }
        int best = 1;
        for (int plain = 1; plain <= allowed; plain *= 2) {
            best = plain;
            if (plain > 1 && plain + plain / 2 <= allowed) {
                best = plain + plain / 2;
            }
        }
        return best;
    }

    /** Whether a length is that of a plain note or of one with one dot. */
    private static boolean isOneNote(int length) {
        int odd = length >> Integer.numberOfTrailingZeros(length);
        return odd == 1 || odd == 3;
    }

    /** The longest single rest, in units, that may stand at a unit and last at most so long. */
    int longestRest(int at, int most) {
        int aligned = at == 0 ? units : Integer.lowestOneBit(at);
        return Integer.highestOneBit(Math.min(most, aligned));
    }

    /** The written value of a plain or dotted length in units. */
    NoteValue valueOf(int length) {
        return value.shorter(-Integer.numberOfTrailingZeros(Integer.highestOneBit(length)));
    }

    /** The dots of a plain or dotted length in units. */
    static int dotsOf(int length) {
        return Integer.bitCount(length) - 1;
    }
}
