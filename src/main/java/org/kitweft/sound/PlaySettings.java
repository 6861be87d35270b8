package org.kitweft.sound;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.Limb;

/**
 * How a phrase is played. Immutable; the {@code with…} methods make changed copies.
 *
 * @param tempo beats of the meter in a minute
 * @param loops how often the phrase is played, to {@value #MOST_LOOPS}; {@value #ENDLESS}: until it
 *     is stopped, in a file once
 * @param countInBars bars of click before the phrase, 0 to {@value #MOST_COUNT_IN}
 * @param click whether every beat is clicked
 * @param muted limbs that are not heard
 * @param solo if not empty, only these limbs are heard, unless they are muted
 * @param level loudness, 0 silent to 1 full scale; a gain, not decibels
 * @param mix which parts are heard, how loud and where
 * @param course how the loops differ; where it sets tempi of its own, they go before {@code tempo}
 * @param stretch which bars a loop has, in half time, as written or in double time
 */
public record PlaySettings(
        Tempo tempo,
        int loops,
        int countInBars,
        boolean click,
        Set<Limb> muted,
        Set<Limb> solo,
        double level,
        Mix mix,
        Course course,
        Stretch stretch) {
    /** Looping until stopped. */
    public static final int ENDLESS = 0;

    /** The most loops that can be asked for. */
    public static final int MOST_LOOPS = 10_000;

    /** The longest count-in, in bars. */
    public static final int MOST_COUNT_IN = 8;

    /** Sound starts low: half of full scale, 6 dB below it. */
    public static final double LOW_LEVEL = 0.5;

    /** The default tempo, looping until stopped, all limbs heard at a low level, without click. */
    public static final PlaySettings DEFAULT =
            new PlaySettings(
                    Tempo.DEFAULT,
                    ENDLESS,
                    0,
                    false,
                    Set.of(),
                    Set.of(),
                    LOW_LEVEL,
                    Mix.DEFAULT,
                    Course.STEADY,
                    Stretch.WHOLE);

    public PlaySettings {
        Objects.requireNonNull(tempo, "tempo");
        Objects.requireNonNull(mix, "mix");
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(stretch, "stretch");
        check("loops", loops, MOST_LOOPS);
        check("count-in bars", countInBars, MOST_COUNT_IN);
        if (!(level >= 0 && level <= 1)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "level %s: expected 0 to 1", level));
        }
        muted = copy(muted);
        solo = copy(solo);
    }

    private static void check(String what, int value, int most) {
        if (value < 0 || value > most) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%d %s: expected 0 to %d", value, what, most));
        }
    }

    private static Set<Limb> copy(Set<Limb> limbs) {
        Set<Limb> copy = EnumSet.noneOf(Limb.class);
        copy.addAll(limbs);
        return Collections.unmodifiableSet(copy);
    }

    /** Whether a limb is heard. */
    public boolean hears(Limb limb) {
        return !muted.contains(limb) && (solo.isEmpty() || solo.contains(limb));
    }

    /** The same at another tempo. */
    public PlaySettings withTempo(Tempo other) {
        return new PlaySettings(
                other, loops, countInBars, click, muted, solo, level, mix, course, stretch);
    }

    /** The same played another number of times. */
    public PlaySettings withLoops(int other) {
        return new PlaySettings(
                tempo, other, countInBars, click, muted, solo, level, mix, course, stretch);
    }

    /** The same with another count-in. */
    public PlaySettings withCountInBars(int other) {
        return new PlaySettings(
                tempo, loops, other, click, muted, solo, level, mix, course, stretch);
    }

    /** The same with or without click. */
    public PlaySettings withClick(boolean other) {
        return new PlaySettings(
                tempo, loops, countInBars, other, muted, solo, level, mix, course, stretch);
    }

    /** The same with exactly these limbs muted. */
    public PlaySettings withMuted(Set<Limb> other) {
        return new PlaySettings(
                tempo, loops, countInBars, click, other, solo, level, mix, course, stretch);
    }

    /** The same with exactly these limbs solo. */
    public PlaySettings withSolo(Set<Limb> other) {
        return new PlaySettings(
                tempo, loops, countInBars, click, muted, other, level, mix, course, stretch);
    }

    /** The same at another level. */
    public PlaySettings withLevel(double other) {
        return new PlaySettings(
                tempo, loops, countInBars, click, muted, solo, other, mix, course, stretch);
    }

    /** The same on another mix. */
    public PlaySettings withMix(Mix other) {
        return new PlaySettings(
                tempo, loops, countInBars, click, muted, solo, level, other, course, stretch);
    }

    /** The same on another course. */
    public PlaySettings withCourse(Course other) {
        return new PlaySettings(
                tempo, loops, countInBars, click, muted, solo, level, mix, other, stretch);
    }

    /** The same with other bars, or at another feel. */
    public PlaySettings withStretch(Stretch other) {
        return new PlaySettings(
                tempo, loops, countInBars, click, muted, solo, level, mix, course, other);
    }

    /** How many loops there are in all; {@value #ENDLESS} without end. */
    public int loopsInAll() {
        return course.loopsInAll(loops);
    }

    /** Tempo and sounding of a loop, counted from 0. */
    public Practice.Loop loop(int index) {
        return course.loop(index, loops, tempo);
    }
}
