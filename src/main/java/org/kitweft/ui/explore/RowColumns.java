package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;

/**
 * Where the columns of the list stand, the same in its head and its rows: number, the steps of the
 * sticking, travel, highest tempo, score.
 *
 * @param number right edge of the row's number
 * @param left where the steps begin
 * @param cell width of a step
 * @param beatGap room between beats
 * @param perBeat steps of a beat
 * @param shown how many steps there is room for
 * @param cm right edge of the travel
 * @param bpm right edge of the tempo
 * @param score right edge of the score
 */
record RowColumns(
        int number,
        int left,
        double cell,
        int beatGap,
        int perBeat,
        int shown,
        int cm,
        int bpm,
        int score) {
    private static final int WIDEST = 40;
    private static final int NARROWEST = 4;
    private static final int GAP = 7;

    static RowColumns of(FontMetrics metrics, int width, Steps steps, VariationList rows) {
        int gap = UIScale.scale(GAP);
        boolean scored = rows.order().role().isPresent();
        int score = width - gap;
        int bpm = scored ? score - metrics.stringWidth("100 %") - gap : score;
        int cm = bpm - metrics.stringWidth("to bpm") - gap;
        int right = cm - metrics.stringWidth("0000") - gap;
        int digits = Integer.toString(Math.max(100, rows.getSize())).length();
        int number = UIScale.scale(6) + digits * metrics.charWidth('0');
        int left = number + UIScale.scale(7);
        int beatGap = UIScale.scale(5);
        int beats = (steps.size() - 1) / steps.perBeat();
        double room = Math.max(1, right - left - beats * beatGap);
        double cell =
                Math.max(
                        UIScale.scale(NARROWEST),
                        Math.min(UIScale.scale(WIDEST), room / steps.size()));
        int shown = steps.size();
        while (shown > 1 && left + shown * cell + (shown - 1) / steps.perBeat() * beatGap > right) {
            shown--;
        }
        return new RowColumns(number, left, cell, beatGap, steps.perBeat(), shown, cm, bpm, score);
    }

    /** Left edge of a step. */
    double x(int step) {
        return left + step * cell + (double) (step / perBeat * beatGap);
    }
}
