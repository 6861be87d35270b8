package org.kitweft.kit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a note stands on a five-line staff, named as in treble clef: the middle line is B4. For
 * pitched surfaces it is the key's name, sharps included.
 *
 * @param step C to B as 0 to 6
 * @param sharp whether a sharp stands before it
 * @param octave 0 to 9; C4 is the key 60
 */
public record StaffPlace(int step, boolean sharp, int octave) {
    private static final String STEPS = "CDEFGAB";
    private static final Pattern TEXT = Pattern.compile("([A-G])(#?)([0-9])");

    public StaffPlace {
        if (step < 0 || step > 6 || octave < 0 || octave > 9) {
            throw new IllegalArgumentException(
                    "a staff place lies between C0 and B9, not step %d of octave %d"
                            .formatted(step, octave));
        }
    }

    /**
     * Reads a place such as {@code C5} or {@code F#4}.
     *
     * @throws IllegalArgumentException if it is none
     */
    public static StaffPlace parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "'%s' is not a staff place such as C5 or F#4".formatted(text));
        }
        return new StaffPlace(
                STEPS.indexOf(matcher.group(1)),
                !matcher.group(2).isEmpty(),
                Integer.parseInt(matcher.group(3)));
    }

    /** Steps of the scale above C0: one for each line or space. */
    public int diatonic() {
        return octave * 7 + step;
    }

    /** The letter C to B. */
    public char letter() {
        return STEPS.charAt(step);
    }

    /** The text that reads back to this place. */
    public String text() {
        return letter() + (sharp ? "#" : "") + octave;
    }

    @Override
    public String toString() {
        return text();
    }
}
