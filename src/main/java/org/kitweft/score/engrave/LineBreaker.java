package org.kitweft.score.engrave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Breaks measures into lines so that all lines together are stretched or squeezed as evenly as
 * possible: dynamic programming over the last break, as text setters do it (Knuth and Plass,
 * <i>Breaking Paragraphs into Lines</i>, 1981).
 */
final class LineBreaker {
    /** A line of 1, 2 or 4 bars, or a multiple of 4, reads as a phrase: a small bonus. */
    private static final double ODD_COUNT_PENALTY = 0.03;

    private final double width;

    LineBreaker(double width) {
        this.width = width;
    }

    /**
     * Where lines start.
     *
     * @param wanted what each measure would like
     * @param needed what each measure needs
     * @param prelude what clef and meter take when a line starts at a measure
     * @return indices of the first measure of each line, the first being 0
     */
    List<Integer> lines(double[] wanted, double[] needed, IntToDoubleFunction prelude) {
        int count = wanted.length;
        double[] best = new double[count + 1];
        int[] from = new int[count + 1];
        Arrays.fill(best, Double.MAX_VALUE);
        best[0] = 0;
        for (int end = 1; end <= count; end++) {
            double wants = 0;
            double needs = 0;
            for (int start = end - 1; start >= 0; start--) {
                wants += wanted[start];
                needs += needed[start];
                double room = width - prelude.applyAsDouble(start);
                if (needs > room && start < end - 1) {
                    break;
                }
                double cost = best[start] + cost(room / wants, end - start, end == count);
                if (cost < best[end]) {
                    best[end] = cost;
                    from[end] = start;
                }
            }
        }
        List<Integer> starts = new ArrayList<>();
        for (int end = count; end > 0; end = from[end]) {
            starts.add(0, from[end]);
        }
        return starts;
    }

    private static double cost(double stretch, int bars, boolean last) {
        double uneven = Math.log(stretch) / Math.log(2);
        // A short last line may end early; it only should not be squeezed.
        double badness = last && uneven > 0 ? uneven * uneven / 4 : uneven * uneven;
        boolean odd = bars != 1 && bars != 2 && bars % 4 != 0;
        return badness * (uneven < 0 ? 3 : 1) + (odd ? ODD_COUNT_PENALTY : 0) + 0.01;
    }
}
