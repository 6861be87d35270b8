package org.kitweft.bench;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;
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
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the engine takes for each task that has a bound. The rivals stand in {@link
 * RivalsBenchmark}; run both at once, with what is allocated:
 *
 * <pre>mvn -q test-compile exec:exec -Dbench='(Possibilities|Rivals)Benchmark'</pre>
 *
 * <p>A task named after a rule has it beside reach and no crossing. Sizes are strokes by sounds a
 * hand. The bound of 64 MB is the heap of the tasks that have it.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2000, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 1)
public class PossibilitiesBenchmark {
    private static final int SAMPLES = 100_000;

    /** The tasks: recipes, choices, rules. */
    @State(Scope.Benchmark)
    public static class Task {
        private final Kit kit = BuiltInKits.load("extended");
        private final Kit marimba = BuiltInKits.load("marimba");
        private final Recipe sixteen = recipe("[RLRR LRLL]*2", kit);
        private final Recipe irregular = recipe("RLLR RLRL LRRL RLLL", kit);
        private final Recipe doubles = recipe("[RRLL]*4", kit);
        private final Recipe withKick = recipe("RLKL RLKR LKRL RLKL", kit);
        private final Recipe thirtyTwo = recipe("[RLRR LRLL]*4", marimba);
        private final Recipe sixtyFour = recipe("[RLRR LRLL]*8", marimba);
        private final Choices twelve = Tasks.hands(kit, 12);
        private final Choices andKick = twelve.with("K=bass-drum", kit);
        private final Choices twenty = Tasks.hands(marimba, 20);
        private final Choices forty = Tasks.hands(marimba, 40);
        private final List<Rule> reach = List.of(new Rule.Reach(60), Rule.NoCrossing.usual());
        private final List<Rule> reachOnMarimba =
                List.of(new Rule.Reach(20), Rule.NoCrossing.usual());
        private final List<Rule> loop = Tasks.and(reach, new Rule.Loop());
        private final List<Rule> few = Tasks.and(loop, new Rule.Surfaces(2, 4));
        private final List<Rule> some = Tasks.and(loop, new Rule.Surfaces(3, 6));
        private final List<Rule> seven = List.of(new Rule.Reach(60), new Rule.Surfaces(7, 7));
        private final List<Rule> all =
                List.of(
                        new Rule.Reach(20),
                        new Rule.AtTempo(new Tempo(100)),
                        Rule.NoCrossing.usual(),
                        new Rule.Loop(),
                        new Rule.Surfaces(2, 4),
                        new Rule.Pin(9, twenty.of(Letter.L).get(5)));

        private static Recipe recipe(String sticking, Kit kit) {
            return Recipe.plain(Sticking.parse(sticking), kit);
        }
    }

    /** Tasks already counted. */
    @State(Scope.Benchmark)
    public static class Counted {
        private final Task task = new Task();
        private final Possibilities reach = Possibilities.of(task.sixteen, task.twelve, task.reach);
        private final Possibilities loop = Possibilities.of(task.sixteen, task.twelve, task.loop);
        private final Possibilities some = Possibilities.of(task.irregular, task.twelve, task.some);
        private final Possibilities wide =
                Possibilities.of(task.sixtyFour, task.twenty, task.reachOnMarimba);
        private final Possibilities all = Possibilities.of(task.sixtyFour, task.twenty, task.all);
        private long seed;

        private Variation one(Possibilities possibilities) {
            // A stride without a common divisor spreads the indices over all beginnings.
            BigInteger step = BigInteger.valueOf(6_700_417L * seed++);
            BigInteger total = possibilities.total();
            return possibilities.get(total.multiply(step).shiftRight(32).mod(total));
        }
    }

    /** Counted a moment ago: nothing has been read yet. */
    @State(Scope.Benchmark)
    public static class JustCounted {
        private final Task task = new Task();
        private Possibilities some;
        private Possibilities doubles;
        private BigInteger indexOfSome;
        private BigInteger indexOfDoubles;
        private long seed;

        /** Counts anew. */
        @Setup(Level.Invocation)
        public void count() {
            some = Possibilities.of(task.irregular, task.twelve, task.some);
            doubles = Possibilities.of(task.doubles, task.twelve, task.some);
            Random random = new Random(seed++);
            indexOfSome = new BigInteger(80, random).mod(some.total());
            indexOfDoubles = new BigInteger(80, random).mod(doubles.total());
        }
    }

    /** A sticking of so many strokes. */
    @State(Scope.Benchmark)
    public static class Length {
        /** How many. */
        @Param({"16", "32", "64", "128", "256"})
        public int strokes;

        private Recipe recipe(Task task) {
            return Task.recipe("[RLRR LRLL]*" + strokes / 8, task.marimba);
        }
    }

    private static BigInteger total(Recipe recipe, Choices choices, List<Rule> rules) {
        return Possibilities.of(recipe, choices, rules).total();
    }

    private static List<Variation> best(
            Recipe recipe, Choices choices, List<Rule> rules, int count) {
        return Possibilities.of(recipe, choices, rules).best(Cost.TRAVEL).limit(count).toList();
    }

    /** All counts without rules. */
    @Benchmark
    public Counts counts64x40(Task task) {
        return Counts.of(task.sixtyFour.sticking(), task.forty);
    }

    /** Bound: 0.3 ms. */
    @Benchmark
    public BigInteger reach16x12(Task task) {
        return total(task.sixteen, task.twelve, task.reach);
    }

    /** Bound: 1.2 ms. */
    @Benchmark
    public BigInteger reach32x20(Task task) {
        return total(task.thirtyTwo, task.twenty, task.reachOnMarimba);
    }

    /** Bound: in proportion to the strokes, and to the digits of the total. */
    @Benchmark
    public BigInteger reachByStrokesX20(Task task, Length length) {
        return total(length.recipe(task), task.twenty, task.reachOnMarimba);
    }

    /** Loop alone. */
    @Benchmark
    public BigInteger loop16x12(Task task) {
        return total(task.sixteen, task.twelve, task.loop);
    }

    /** Loop and two to four different surfaces. Bound: 50 ms, 64 MB. */
    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx64m")
    public BigInteger loopAndFewSurfaces16x12(Task task) {
        return total(task.sixteen, task.twelve, task.few);
    }

    /** Loop and three to six, a sticking that does not repeat. Bound: 50 ms, 64 MB. */
    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx64m")
    public BigInteger loopAndSomeSurfaces16x12(Task task) {
        return total(task.irregular, task.twelve, task.some);
    }

    /** The same with double strokes: the left hand waits. Bound: 50 ms, 64 MB. */
    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx64m")
    public BigInteger loopAndSomeSurfacesDoubles16x12(Task task) {
        return total(task.doubles, task.twelve, task.some);
    }

    /** The same with a kick. Bound: 50 ms, 64 MB. */
    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx64m")
    public BigInteger loopAndSomeSurfacesKick16x12(Task task) {
        return total(task.withKick, task.andKick, task.some);
    }

    /** Three to six different surfaces without loop. */
    @Benchmark
    public BigInteger someSurfaces16x12(Task task) {
        return total(task.irregular, task.twelve, Tasks.and(task.reach, new Rule.Surfaces(3, 6)));
    }

    /** Every kind of rule at once. Bound: 200 ms. */
    @Benchmark
    public BigInteger allRules64x20(Task task) {
        return total(task.sixtyFour, task.twenty, task.all);
    }

    /** From changed rules to the first of the best. Bound: 50 ms. */
    @Benchmark
    public List<Variation> firstOfBest16x12(Task task) {
        return best(task.sixteen, task.twelve, task.reach, 1);
    }

    /** From changed rules to all of the best hundred. */
    @Benchmark
    public List<Variation> bestHundred16x12(Task task) {
        return best(task.sixteen, task.twelve, task.reach, 100);
    }

    /** Bound: 50 ms. */
    @Benchmark
    public List<Variation> firstOfBestLoop16x12(Task task) {
        return best(task.sixteen, task.twelve, task.loop, 1);
    }

    /** From changed rules to all of the best hundred. */
    @Benchmark
    public List<Variation> bestHundredLoop16x12(Task task) {
        return best(task.sixteen, task.twelve, task.loop, 100);
    }

    /** Bound: 50 ms. */
    @Benchmark
    public List<Variation> firstOfBestLoopAndSomeSurfaces16x12(Task task) {
        return best(task.irregular, task.twelve, task.some, 1);
    }

    /** From changed rules to all of the best hundred. */
    @Benchmark
    public List<Variation> bestHundredLoopAndSomeSurfaces16x12(Task task) {
        return best(task.irregular, task.twelve, task.some, 100);
    }

    /** Seven surfaces, neither more nor less: no bound, and hard to find. */
    @Benchmark
    public List<Variation> firstOfBestSevenSurfaces16x12(Task task) {
        return best(task.sixteen, task.twelve, task.seven, 1);
    }

    /** Bound: 1 ms. */
    @Benchmark
    public Variation kth16x12(Counted counted) {
        return counted.one(counted.reach);
    }

    /** Bound: 1 ms. */
    @Benchmark
    public Variation kthLoopAndSomeSurfaces16x12(Counted counted) {
        return counted.one(counted.some);
    }

    /** The first that is read after counting. Bound: 1 ms. */
    @Benchmark
    public Variation kthJustCountedLoopAndSomeSurfaces16x12(JustCounted counted) {
        return counted.some.get(counted.indexOfSome);
    }

    /** The same with double strokes. Bound: 1 ms. */
    @Benchmark
    public Variation kthJustCountedLoopAndSomeSurfacesDoubles16x12(JustCounted counted) {
        return counted.doubles.get(counted.indexOfDoubles);
    }

    /** Bound: 1 ms. */
    @Benchmark
    public Variation kthAllRules64x20(Counted counted) {
        return counted.one(counted.all);
    }

    /** A hundred thousand. Bound: 1000 ms. */
    @Benchmark
    public List<Variation> samples16x12(Counted counted) {
        return counted.reach.sample(SAMPLES, counted.seed++);
    }

    /** A hundred thousand. Bound: 1000 ms. */
    @Benchmark
    public List<Variation> samplesLoop16x12(Counted counted) {
        return counted.loop.sample(SAMPLES, counted.seed++);
    }

    /** A hundred thousand. Bound: 1000 ms. */
    @Benchmark
    public List<Variation> samplesLoopAndSomeSurfaces16x12(Counted counted) {
        return counted.some.sample(SAMPLES, counted.seed++);
    }

    /** A hundred thousand of a total beyond 64 bits. Bound: 1000 ms. */
    @Benchmark
    public List<Variation> samples64x20(Counted counted) {
        return counted.wide.sample(SAMPLES, counted.seed++);
    }

    /** A hundred thousand of a total beyond 64 bits. Bound: 1000 ms. */
    @Benchmark
    public List<Variation> samplesAllRules64x20(Counted counted) {
        return counted.all.sample(SAMPLES, counted.seed++);
    }

    /** What the window shades its choices by. */
    @Benchmark
    public Object waysPerStroke16x12(Counted counted) {
        return counted.reach.waysPerStroke();
    }

    /** What the window shades its choices by. */
    @Benchmark
    public Object waysPerStrokeLoopAndSomeSurfaces16x12(Counted counted) {
        return counted.some.waysPerStroke();
    }
}
