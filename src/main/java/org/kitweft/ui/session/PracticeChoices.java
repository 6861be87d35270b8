package org.kitweft.ui.session;

import java.util.Objects;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.sound.Course;

/**
 * What is chosen for practice. Immutable.
 *
 * @param way how the tempo goes
 * @param rise beats a minute by which it rises
 * @param ceiling the fastest it rises to
 * @param loopsEach loops at each tempo
 * @param steps the tempi of {@link Way#STEPS}
 * @param dropOut whether every other loop is silent
 */
public record PracticeChoices(
        Way way, int rise, Tempo ceiling, int loopsEach, TempoSteps steps, boolean dropOut) {

    /** How the tempo goes from loop to loop. */
    public enum Way {
        /** It stays. */
        STEADY,
        /** It rises from that of the session to a ceiling. */
        RISE,
        /** It goes through steps that were typed or stand in the lesson. */
        STEPS
    }

    /** The most that it rises by at once, and the most loops at a tempo. */
    public static final int MOST_RISE = 50;

    public static final int MOST_LOOPS = 100;

    /** Five beats a minute each four loops, to 120: our own choice of a beginning. */
    public static final PracticeChoices FIRST =
            new PracticeChoices(
                    Way.STEADY, 5, new Tempo(120), 4, TempoSteps.parse("60 66 72 80"), false);

    public PracticeChoices {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(ceiling, "ceiling");
        Objects.requireNonNull(steps, "steps");
    }

    public PracticeChoices with(Way other) {
        return new PracticeChoices(other, rise, ceiling, loopsEach, steps, dropOut);
    }

    public PracticeChoices withRise(int other) {
        return new PracticeChoices(way, other, ceiling, loopsEach, steps, dropOut);
    }

    public PracticeChoices withCeiling(Tempo other) {
        return new PracticeChoices(way, rise, other, loopsEach, steps, dropOut);
    }

    public PracticeChoices withLoopsEach(int other) {
        return new PracticeChoices(way, rise, ceiling, other, steps, dropOut);
    }

    public PracticeChoices with(TempoSteps other) {
        return new PracticeChoices(way, rise, ceiling, loopsEach, other, dropOut);
    }

    public PracticeChoices withDropOut(boolean other) {
        return new PracticeChoices(way, rise, ceiling, loopsEach, steps, other);
    }

    /** The course that it makes from a tempo; a ceiling below that does not slow it down. */
    public Course course(Tempo start) {
        return switch (way) {
            case STEPS -> new Course.Stepped(steps, loopsEach, dropOut);
            case RISE -> rising(start, rise, loopsEach);
            case STEADY -> dropOut ? rising(start, 0, 1) : Course.STEADY;
        };
    }

    private Course rising(Tempo start, int by, int each) {
        int top = by == 0 ? start.beatsPerMinute() : ceiling.beatsPerMinute();
        Tempo most = new Tempo(Math.max(top, start.beatsPerMinute()));
        return new Course.Practised(new Practice(start, by, each, most, dropOut));
    }
}
