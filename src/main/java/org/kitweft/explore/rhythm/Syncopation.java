package org.kitweft.explore.rhythm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.numbers.core.ArithmeticUtils;
import org.apache.commons.numbers.fraction.Fraction;

/**
 * Published measures of how much a rhythm works against its meter. All take the rhythm as a cycle
 * that comes round. They measure different things and are not to be compared with each other; check
 * values stand in {@code shared/reference/syncopation.csv} and its neighbours.
 */
public final class Syncopation {
    private Syncopation() {}

    /**
     * Longuet-Higgins and Lee 1984, note by note: for each struck step the weight of the heaviest
     * silent step before the next struck one, minus its own weight. Empty where no silent step
     * follows; 0 or more is a syncopation, 0 the weakest kind.
     */
    public static List<OptionalInt> longuetHigginsLeeByNote(Rhythm rhythm, MetricWeights meter) {
        checkSameSteps(rhythm, meter);
        List<Integer> at = rhythm.inOrder();
        List<Integer> durations = rhythm.durations();
        List<OptionalInt> strengths = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            OptionalInt heaviest = OptionalInt.empty();
            for (int silent = 1; silent < durations.get(i); silent++) {
                int weight = meter.at(at.get(i) + silent);
                heaviest = OptionalInt.of(Math.max(weight, heaviest.orElse(weight)));
            }
            int own = meter.at(at.get(i));
            strengths.add(
                    heaviest.isPresent()
                            ? OptionalInt.of(heaviest.getAsInt() - own)
                            : OptionalInt.empty());
        }
        return strengths;
    }

    /** Longuet-Higgins and Lee 1984, the index: the sum of the strengths above 0. */
    public static int longuetHigginsLee(Rhythm rhythm, MetricWeights meter) {
        return longuetHigginsLeeByNote(rhythm, meter).stream()
                .mapToInt(strength -> Math.max(0, strength.orElse(0)))
                .sum();
    }

    /**
     * Fitch and Rosenfeld 2007: every silent step adds its weight minus that of the struck step
     * before it, where that is above 0. Differs from {@link #longuetHigginsLee} where several
     * strong steps are silent after one note.
     */
    public static int fitchRosenfeld(Rhythm rhythm, MetricWeights meter) {
        checkSameSteps(rhythm, meter);
        List<Integer> at = rhythm.inOrder();
        List<Integer> durations = rhythm.durations();
        int sum = 0;
        for (int i = 0; i < at.size(); i++) {
            for (int silent = 1; silent < durations.get(i); silent++) {
                sum += Math.max(0, meter.at(at.get(i) + silent) - meter.at(at.get(i)));
            }
        }
        return sum;
    }

    /**
     * Off-beatness, Toussaint 2005: struck steps whose number is prime to the length of the cycle,
     * so that no even division of it ever meets them.
     */
    public static int offBeatness(Rhythm rhythm) {
        return (int)
                rhythm.struck().stream()
                        .filter(step -> ArithmeticUtils.gcd(step, rhythm.steps()) == 1)
                        .count();
    }

    /**
     * Keith 1991, counted as in Gómez and others 2005: notes whose start is no multiple of the
     * greatest power of 2 that their length holds.
     */
    public static int keith(Rhythm rhythm) {
        List<Integer> at = rhythm.inOrder();
        List<Integer> durations = rhythm.durations();
        int count = 0;
        for (int i = 0; i < at.size(); i++) {
            count += at.get(i) % Integer.highestOneBit(durations.get(i)) == 0 ? 0 : 1;
        }
        return count;
    }

    /**
     * Weighted note-to-beat distance, Gómez and others 2005. A note counts 0 on a beat; else, T
     * being its distance to the nearest beat in beats, 2/T if it ends after the next beat and
     * before the one after that, else 1/T; the sum is divided by the number of notes. 0 for a
     * rhythm without notes.
     *
     * @param stepsPerBeat at least 1, dividing the length of the rhythm
     */
    public static Fraction weightedNoteToBeat(Rhythm rhythm, int stepsPerBeat) {
        if (stepsPerBeat < 1 || rhythm.steps() % stepsPerBeat != 0) {
            throw new IllegalArgumentException(
                    "%d steps do not divide into beats of %d"
                            .formatted(rhythm.steps(), stepsPerBeat));
        }
        List<Integer> at = rhythm.inOrder();
        List<Integer> durations = rhythm.durations();
        Fraction sum = Fraction.ZERO;
        for (int i = 0; i < at.size(); i++) {
            int past = at.get(i) % stepsPerBeat;
            if (past != 0) {
                int toNext = stepsPerBeat - past;
                Fraction inverse = Fraction.of(stepsPerBeat, Math.min(past, toNext));
                int end = durations.get(i);
                boolean tiedOver = end > toNext && end < toNext + stepsPerBeat;
                sum = sum.add(tiedOver ? inverse.multiply(2) : inverse);
            }
        }
        return at.isEmpty() ? sum : sum.divide(at.size());
    }

    /**
     * Metric complexity, Toussaint 2002: the greatest sum of weights that so many notes can have,
     * minus the sum that these have.
     */
    public static int metricComplexity(Rhythm rhythm, MetricWeights meter) {
        checkSameSteps(rhythm, meter);
        int greatest =
                meter.weights().stream()
                        .sorted(Comparator.reverseOrder())
                        .limit(rhythm.struck().size())
                        .mapToInt(Integer::intValue)
                        .sum();
        return greatest - rhythm.struck().stream().mapToInt(meter::at).sum();
    }

    private static void checkSameSteps(Rhythm rhythm, MetricWeights meter) {
        if (rhythm.steps() != meter.steps()) {
            throw new IllegalArgumentException(
                    "the rhythm has %d steps, the meter %d: expected as many"
                            .formatted(rhythm.steps(), meter.steps()));
        }
    }
}
