package org.kitweft.bench;

import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.Fraction;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Sticking;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Weaving 64 bars of sixteenths, beside the least that any weaver must do: one exact fraction of a
 * quarter note for each hit.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WeavingBenchmark {
    private static final int BARS = 64;

    private final Recipe recipe =
            Recipe.plain(Sticking.parse(">RLRR LRLL"), BuiltInKits.load("five-piece"))
                    .withBars(OptionalInt.of(BARS));

    /** The weaver. */
    @Benchmark
    public Groove weave() {
        return recipe.weave();
    }

    /** The rival: as many fractions as there are hits, and nothing else. */
    @Benchmark
    public List<Fraction> onlyTheTimes() {
        int steps = BARS * Grid.SIXTEENTHS.stepsPerBar();
        return IntStream.range(0, steps).mapToObj(step -> Fraction.of(step, 4)).toList();
    }
}
