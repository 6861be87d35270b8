package org.kitweft.score.handout;

import java.util.List;
import java.util.stream.IntStream;
import org.kitweft.groove.Tempo;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.TextStyle;

/**
 * Tempo steps to tick off, in rows as wide as there is room. Lengths are in points.
 *
 * @param steps beats a minute
 * @param width the room there is
 */
record TempoBoxes(List<Integer> steps, double width) {
    private static final int USUAL_STEPS = 8;
    private static final int USUAL_STEP = 6;
    private static final double TEXT_SIZE = 9.5;
    private static final double BOX = 9;
    private static final double STEP_WIDTH = 36;
    private static final double STEP_HEIGHT = BOX + 11;

    TempoBoxes {
        steps = List.copyOf(steps);
    }

    /** The steps that were given, or a ladder of sixes from a tempo where none were. */
    static TempoBoxes of(List<Integer> given, Tempo tempo, double width) {
        return new TempoBoxes(given.isEmpty() ? ladder(tempo) : given, width);
    }

    private static List<Integer> ladder(Tempo tempo) {
        return IntStream.range(0, USUAL_STEPS)
                .map(i -> tempo.beatsPerMinute() + i * USUAL_STEP)
                .filter(bpm -> bpm <= Tempo.FASTEST)
                .boxed()
                .toList();
    }

    private int perRow() {
        return Math.max(1, (int) (width / STEP_WIDTH));
    }

    /** The height of all rows. */
    double height() {
        int rows = (steps.size() + perRow() - 1) / perRow();
        return rows * STEP_HEIGHT;
    }

    /** Places them below a point. */
    void place(SignList signs, double left, double top) {
        for (int i = 0; i < steps.size(); i++) {
            double x = left + i % perRow() * STEP_WIDTH;
            int row = i / perRow();
            double y = top + row * STEP_HEIGHT;
            Lines.box(signs, x, y, BOX, BOX);
            signs.text(
                    Kind.TEXT,
                    Integer.toString(steps.get(i)),
                    TextStyle.SEMIBOLD,
                    TEXT_SIZE,
                    x + BOX + 3.5,
                    y + BOX - 1.4,
                    Owner.NONE);
        }
    }
}
