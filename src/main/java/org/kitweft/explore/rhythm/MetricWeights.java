package org.kitweft.explore.rhythm;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;

/**
 * How strong each step of a bar is by its meter alone.
 *
 * <p>Longuet-Higgins and Lee 1984: the bar's first step weighs 0; a step that first appears when
 * the bar is divided for the d-th time weighs −d. Four sixteenths of a beat of 4/4: −2 −4 −3 −4 for
 * the second beat.
 *
 * @param weights one for each step, 0 or below
 */
public record MetricWeights(List<Integer> weights) {

    public MetricWeights {
        weights = List.copyOf(weights);
        if (weights.isEmpty()) {
            throw new IllegalArgumentException("a meter has at least 1 step");
        }
    }

    /**
     * From the divisions of a bar, the top level first: {@code 2 2 2} are eighths of 4/4, {@code 2
     * 3} those of 6/8.
     */
    public static MetricWeights ofDivisions(List<Integer> divisions) {
        int steps = 1;
        for (int division : divisions) {
            if (division < 1) {
                throw new IllegalArgumentException(
                        "a division of the bar is 1 or more, not %d".formatted(division));
            }
            steps = Math.multiplyExact(steps, division);
        }
        List<Integer> weights = new ArrayList<>();
        for (int step = 0; step < steps; step++) {
            int span = steps;
            int depth = 0;
            while (step % span != 0) {
                span /= divisions.get(depth);
                depth++;
            }
            weights.add(-depth);
        }
        return new MetricWeights(weights);
    }

    /**
     * The steps of one bar of a grid. Beats group by the prime factors of their number, twos first
     * (4/4 is 2·2, 6/4 is 2·3); a beat divides the same way, but a dotted one by three first.
     * Common practice, no source.
     */
    public static MetricWeights of(Grid grid) {
        Meter meter = grid.meter();
        List<Integer> divisions = new ArrayList<>(primes(meter.beats()));
        int perBeat = grid.stepsPerBeat();
        if (meter.isCompound() && perBeat % 3 == 0) {
            divisions.add(3);
            perBeat /= 3;
        }
        divisions.addAll(primes(perBeat));
        return ofDivisions(divisions);
    }

    private static List<Integer> primes(int number) {
        List<Integer> primes = new ArrayList<>();
        int left = number;
        for (int prime = 2; left > 1; prime++) {
            while (left % prime == 0) {
                primes.add(prime);
                left /= prime;
            }
        }
        return primes;
    }

    /** The number of steps. */
    public int steps() {
        return weights.size();
    }

    /** The weight of a step; any whole number, the bar coming round. */
    public int at(int step) {
        return weights.get(Math.floorMod(step, weights.size()));
    }
}
