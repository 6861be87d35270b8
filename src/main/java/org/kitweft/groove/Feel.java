package org.kitweft.groove;

/**
 * How fast the drums go against the beat, as drummers say it. The tempo, the click and the band
 * stay; only the note speed of the drums changes.
 *
 * <p>Half time: the bars go by twice while the drums play theirs once, every stroke at twice its
 * distance: what fell on 2 and 4 falls on the 3 of each bar. Double time: the drums play their bars
 * twice while the bars go by once, every stroke at half its distance: what fell on 2 and 4 falls on
 * every "and". (Common practice, no source.)
 *
 * <p>This is how a phrase is played, whatever its steps; what is written stays as it is.
 */
public enum Feel {
    /** At half the written speed. */
    HALF_TIME("half time", 2, 1),
    /** At the written speed. */
    AS_WRITTEN("as written", 1, 1),
    /** At twice the written speed. */
    DOUBLE_TIME("double time", 1, 2);

    private final String words;
    private final int rounds;
    private final int turns;

    Feel(String words, int rounds, int turns) {
        this.words = words;
        this.rounds = rounds;
        this.turns = turns;
    }

    /** For people: {@code half time}. */
    public String words() {
        return words;
    }

    /** How often the bars go by in one loop. */
    public int rounds() {
        return rounds;
    }

    /** How often the drums play all of theirs in one loop. */
    public int turns() {
        return turns;
    }

    /** Where a tick of the drums falls, or how long so many last; rounded down to a whole tick. */
    public long scaled(long tick) {
        return Math.floorDiv(tick * rounds, (long) turns);
    }
}
