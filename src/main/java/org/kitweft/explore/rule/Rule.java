package org.kitweft.explore.rule;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * Something that every variation must keep. Immutable; definitions in words stand at each kind.
 * Several rules of one kind all hold: two reaches are as good as the shorter.
 */
public sealed interface Rule {

    /** The rule in a few words, as in "these rules contradict each other: …". */
    String words();

    /** Strokes of a letter sound on these sounds only. */
    record Allowed(Letter letter, List<SoundName> sounds) implements Rule {
        public Allowed {
            Objects.requireNonNull(letter, "letter");
            sounds = List.copyOf(sounds);
            if (sounds.isEmpty()) {
                throw new IllegalArgumentException(
                        "letter %s: expected at least one sound that is allowed".formatted(letter));
            }
        }

        @Override
        public String words() {
            return letter
                    + " on "
                    + sounds.stream().map(SoundName::text).collect(Collectors.joining(", "));
        }
    }

    /**
     * One stroke sounds on this sound.
     *
     * @param index of the stroke in the sticking, from 0, rests counted
     * @param sound what it strikes
     */
    record Pin(int index, SoundName sound) implements Rule {
        private static final Pattern TEXT = Pattern.compile("\\s*(\\d{1,6})\\s*=\\s*(\\S+)\\s*");

        public Pin {
            Objects.requireNonNull(sound, "sound");
            if (index < 0 || index >= Sticking.MAX_STROKES) {
                throw new IllegalArgumentException(
                        "pin on stroke %d: expected a stroke from 1 to %d"
                                .formatted(index + 1, Sticking.MAX_STROKES));
            }
        }

        /**
         * Reads a pin such as {@code 5=snare}; strokes count from 1 there.
         *
         * @throws IllegalArgumentException if it is none, or the kit has no such sound
         */
        public static Pin parse(String text, Kit kit) {
            Matcher matcher = TEXT.matcher(text);
            if (!matcher.matches()) {
                throw new IllegalArgumentException(
                        "pin \"%s\": expected a stroke and its sound, as in 5=snare"
                                .formatted(text));
            }
            return new Pin(Integer.parseInt(matcher.group(1)) - 1, kit.find(matcher.group(2)));
        }

        @Override
        public String words() {
            return "pin %d=%s".formatted(index + 1, sound.text());
        }
    }

    /**
     * Two consecutive strokes of one limb lie at most so far apart, centre to centre in x and y.
     *
     * @param cm 0 or more
     */
    record Reach(double cm) implements Rule {
        public Reach {
            if (!(cm >= 0) || Double.isInfinite(cm)) {
                throw new IllegalArgumentException(
                        "reach %s cm: expected a number of centimetres, 0 or more"
                                .formatted(plain(cm)));
            }
        }

        @Override
        public String words() {
            return "reach " + plain(cm) + " cm";
        }
    }

    /** Each move of a limb is possible at this tempo under the reach model. */
    record AtTempo(Tempo tempo) implements Rule {
        public AtTempo {
            Objects.requireNonNull(tempo, "tempo");
        }

        @Override
        public String words() {
            return "at tempo " + tempo.beatsPerMinute();
        }
    }

    /**
     * At each stroke, with each hand where it last struck, the right hand's x is not smaller than
     * the left hand's by more than a tolerance. A hand that has not struck yet, and a foot, crosses
     * nothing.
     *
     * @param toleranceCm 0 or more
     */
    record NoCrossing(double toleranceCm) implements Rule {
        /** The tolerance where none is named, in centimetres. */
        public static final double TOLERANCE = 10;

        public NoCrossing {
            if (!(toleranceCm >= 0) || Double.isInfinite(toleranceCm)) {
                throw new IllegalArgumentException(
                        "crossing tolerance %s cm: expected a number of centimetres, 0 or more"
                                .formatted(plain(toleranceCm)));
            }
        }

        /** No crossing beyond the usual tolerance. */
        public static NoCrossing usual() {
            return new NoCrossing(TOLERANCE);
        }

        @Override
        public String words() {
            return toleranceCm == TOLERANCE
                    ? "no crossing"
                    : "no crossing beyond " + plain(toleranceCm) + " cm";
        }
    }

    /**
     * So many different surfaces in the whole pattern.
     *
     * @param least at least 1
     * @param most at least as many as least
     */
    record Surfaces(int least, int most) implements Rule {
        private static final Pattern TEXT =
                Pattern.compile("\\s*(-?\\d{1,9})(?:\\s*\\.\\.\\s*(-?\\d{1,9}))?\\s*");

        public Surfaces {
            if (least < 1 || most < least) {
                throw new IllegalArgumentException(
                        "surfaces %d..%d: expected a least and a most, 1 or more and in that order,"
                                        .formatted(least, most)
                                + " as in 2..4");
            }
        }

        /**
         * Reads a range such as {@code 2..4}, or {@code 3} alone.
         *
         * @throws IllegalArgumentException if it is none
         */
        public static Surfaces parse(String text) {
            Matcher matcher = TEXT.matcher(text);
            if (!matcher.matches()) {
                throw new IllegalArgumentException(
                        "surfaces \"%s\": expected a least and a most, as in 2..4".formatted(text));
            }
            int least = Integer.parseInt(matcher.group(1));
            String most = matcher.group(2);
            return new Surfaces(least, most == null ? least : Integer.parseInt(most));
        }

        @Override
        public String words() {
            return least == most ? "surfaces " + least : "surfaces %d..%d".formatted(least, most);
        }
    }

    /**
     * Reach, tempo and crossing hold from the end back to the start too, each limb standing where
     * it last struck.
     */
    record Loop() implements Rule {
        @Override
        public String words() {
            return "loop";
        }
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
    }
}
