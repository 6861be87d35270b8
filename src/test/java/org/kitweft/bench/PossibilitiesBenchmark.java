package org.kitweft.bench;

import java.math.BigInteger;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.kitweft.explore.Choices;
import org.kitweft.explore.Counts;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Cost;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Letter;
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
 * What the engine takes for the tasks of issue 3, and counting without rules. The rivals stand in
 * {@link RivalsBenchmark}; run both at once:
 *
 * <pre>mvn -q test-compile exec:exec -Dbench='(Possibilities|Rivals)Benchmark'</pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PossibilitiesBenchmark {
    private static final int SAMPLES = 1000;

    private final Kit kit = BuiltInKits.load("extended");
    private final Kit marimba = BuiltInKits.load("marimba");
    private final Recipe sixteen = recipe("[RLRR LRLL]*2", kit);
    private final Recipe irregular = recipe("RLLR RLRL LRRL RLLL", kit);
    private final Recipe thirtyTwo = recipe("[RLRR LRLL]*4", marimba);
    private final Recipe sixtyFour = recipe("[RLRR LRLL]*8", marimba);
    private final Choices twelve = Tasks.hands(kit, 12);
    private final Choices twenty = Tasks.hands(marimba, 20);
    private final Choices forty = Tasks.hands(marimba, 40);
    private final List<Rule> reach = List.of(new Rule.Reach(60), Rule.NoCrossing.usual());
    private final List<Rule> reachOnMarimba = List.of(new Rule.Reach(20), Rule.NoCrossing.usual());
    private final List<Rule> loop =
            List.of(new Rule.Reach(60), Rule.NoCrossing.usual(), new Rule.Loop());
    private final List<Rule> all =
            List.of(
                    new Rule.Reach(20),
                    new Rule.AtTempo(new Tempo(100)),
                    Rule.NoCrossing.usual(),
                    new Rule.Loop(),
                    new Rule.Surfaces(2, 4),
                    new Rule.Pin(9, twenty.of(Letter.L).get(5)));
    private final Possibilities counted = Possibilities.of(sixteen, twelve, reach);
    private final Possibilities countedLoop = Possibilities.of(sixteen, twelve, loop);
    private long seed;

    private static Recipe recipe(String sticking, Kit kit) {
        return Recipe.plain(Sticking.parse(sticking), kit);
    }

    /** All counts without rules: 64 strokes, 40 sounds a hand. */
    @Benchmark
    public Counts counts64x40() {
        return Counts.of(sixtyFour.sticking(), forty);
    }

    /** Reach and no crossing: 16 strokes, 12 sounds a hand. */
    @Benchmark
    public BigInteger reach16x12() {
        return Possibilities.of(sixteen, twelve, reach).total();
    }

    /** Reach and no crossing: 32 strokes, 20 sounds a hand. */
    @Benchmark
    public BigInteger reach32x20() {
        return Possibilities.of(thirtyTwo, twenty, reachOnMarimba).total();
    }

    /** The same with 64 strokes: about twice as long. */
    @Benchmark
    public BigInteger reach64x20() {
        return Possibilities.of(sixtyFour, twenty, reachOnMarimba).total();
    }

    /** Loop and two to four different surfaces. */
    @Benchmark
    public BigInteger loopAndFewSurfaces16x12() {
        return Possibilities.of(sixteen, twelve, Tasks.and(loop, new Rule.Surfaces(2, 4))).total();
    }

    /** Loop and three to six different surfaces; a sticking that does not repeat. */
    @Benchmark
    public BigInteger loopAndSomeSurfaces16x12() {
        return Possibilities.of(irregular, twelve, Tasks.and(loop, new Rule.Surfaces(3, 6)))
                .total();
    }

    /** Every kind of rule at once: 64 strokes, 20 sounds a hand. */
    @Benchmark
    public BigInteger allRules64x20() {
        return Possibilities.of(sixtyFour, twenty, all).total();
    }

    /** From changed rules to the best hundred by travel. */
    @Benchmark
    public long bestHundred16x12() {
        return Possibilities.of(sixteen, twelve, reach).best(Cost.TRAVEL).limit(100).count();
    }

    /** The same with loop. */
    @Benchmark
    public long bestHundredLoop16x12() {
        return Possibilities.of(sixteen, twelve, loop).best(Cost.TRAVEL).limit(100).count();
    }

    /** One variation by its index, once counted. */
    @Benchmark
    public Variation kth16x12() {
        return counted.get(counted.total().shiftRight((int) (seed++ % 40) + 1));
    }

    /** A thousand samples: 100,000 a second are 10 ms. */
    @Benchmark
    public List<Variation> thousandSamples16x12() {
        return counted.sample(SAMPLES, seed++);
    }

    /** The same with loop. */
    @Benchmark
    public List<Variation> thousandSamplesLoop16x12() {
        return countedLoop.sample(SAMPLES, seed++);
    }
}
