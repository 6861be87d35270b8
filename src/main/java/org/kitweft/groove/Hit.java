package org.kitweft.groove;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;

/**
 * One limb strikes one sound. Grace notes and bounces are not hits of their own: they belong to the
 * hit's ornament.
 *
 * @param place the step of the groove's grid it lies on or after
 * @param written where it is written, in ticks from the start of the groove
 * @param start where it sounds, swing considered, in ticks from the start of the groove
 * @param limb who strikes
 * @param letter the letter it comes from; empty for a layer
 * @param sound what is struck
 * @param dynamic how loud
 * @param ornament what is added; grace notes are played by the opposite limb on the same sound
 * @param source where it comes from
 * @param stroke index of its stroke in the sticking, from 0; empty for a layer
 */
public record Hit(
        Place place,
        long written,
        long start,
        Limb limb,
        Optional<Letter> letter,
        SoundName sound,
        Dynamic dynamic,
        Ornament ornament,
        HitSource source,
        OptionalInt stroke) {

    /** In time, then by limb and sound: the order of a groove's hits. */
    public static final Comparator<Hit> IN_TIME =
            Comparator.comparingLong(Hit::start)
                    .thenComparingLong(Hit::written)
                    .thenComparing(Hit::limb)
                    .thenComparing(Hit::sound);

    public Hit {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(limb, "limb");
        Objects.requireNonNull(letter, "letter");
        Objects.requireNonNull(sound, "sound");
        Objects.requireNonNull(dynamic, "dynamic");
        Objects.requireNonNull(ornament, "ornament");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(stroke, "stroke");
        if (written < 0 || start < 0) {
            throw new IllegalArgumentException("a hit lies at or after the start of its groove");
        }
    }

    /** MIDI velocity, 1 to 127. */
    public int velocity() {
        return Velocity.of(dynamic);
    }

    /** The same hit, so many bars and ticks earlier. */
    Hit earlier(int bars, long ticks) {
        return new Hit(
                new Place(place.bar() - bars, place.step()),
                written - ticks,
                start - ticks,
                limb,
                letter,
                sound,
                dynamic,
                ornament,
                source,
                stroke);
    }
}
