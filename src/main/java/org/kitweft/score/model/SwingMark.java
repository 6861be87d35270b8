package org.kitweft.score.model;

import java.util.Optional;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Ticks;

/**
 * How unevenly pairs of notes are played from here on. Notes stand where the straight grid has
 * them, so this is all that says it.
 *
 * @param percent where the second of a pair falls, in percent of the pair; {@value Grid#STRAIGHT}:
 *     straight again
 * @param noteTicks the written length of one of the pair, in ticks
 */
public record SwingMark(int percent, long noteTicks) {
    private static final long EIGHTH = Ticks.PER_QUARTER / 2;

    public SwingMark {
        if (percent < Grid.STRAIGHT || percent > Grid.MOST_SWING || noteTicks < 1) {
            throw new IllegalArgumentException(
                    "swing %d %% of notes of %d ticks: expected %d to %d and at least 1"
                            .formatted(percent, noteTicks, Grid.STRAIGHT, Grid.MOST_SWING));
        }
    }

    /** What a grid has to say: nothing where its steps do not stand in pairs. */
    static Optional<SwingMark> of(Grid grid) {
        return grid.canSwing()
                ? Optional.of(new SwingMark(grid.swing(), grid.stepTicks()))
                : Optional.empty();
    }

    /** Whether it ends the swing. */
    public boolean isStraight() {
        return percent == Grid.STRAIGHT;
    }

    /** Whether eighths swing. */
    public boolean ofEighths() {
        return noteTicks == EIGHTH;
    }

    /** Whether sixteenths swing. */
    public boolean ofSixteenths() {
        return noteTicks == EIGHTH / 2;
    }

    /** In words: {@code swing 67 %}, which note where it is not the eighth. */
    public String words() {
        if (isStraight()) {
            return "straight";
        }
        String words = "swing " + percent + " %";
        if (ofSixteenths()) {
            return words + ", sixteenths";
        }
        return noteTicks == EIGHTH / 4 ? words + ", thirty-seconds" : words;
    }
}
