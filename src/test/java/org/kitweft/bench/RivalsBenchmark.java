package org.kitweft.bench;

import dk.brics.automaton.Automaton;
import dk.brics.automaton.State;
import dk.brics.automaton.Transition;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.openjdk.jmh.annotations.AuxCounters;
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
import org.openjdk.jmh.annotations.Warmup;

/**
 * Reach and no crossing, alone and with loop and three to six different surfaces, counted by the
 * engine, by an automaton (built, made minimal, counted), by a constraint solver that visits all
 * solutions, and by plain enumeration. Whoever cannot finish a task in {@value #LIMIT_SECONDS} s is
 * cut off there: then {@code cutOff} counts how often, and the time is no result. All that finish
 * must agree with the engine.
 */
@org.openjdk.jmh.annotations.State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1, time = 1)
@Measurement(iterations = 2, time = 1)
public class RivalsBenchmark {
    private static final int LIMIT_SECONDS = 2;

    /** Strokes and sounds a hand. */
    @Param({"6x6", "16x12", "32x20"})
    public String size = "";

    /** Whether the pattern loops and counts its surfaces. */
    @Param({"false", "true"})
    public boolean loopAndSurfaces;

    private static final int LEAST = 3;
    private static final int MOST = 6;

    private Recipe recipe = Recipe.plain(Sticking.parse("RL"), BuiltInKits.load("five-piece"));
    private Choices choices = Choices.NONE;
    private List<Rule> rules = List.of();
    private List<Surface> surfaces = List.of();
    private double reach;
    private String letters = "";
    private long deadline;
    private BigInteger total = BigInteger.ZERO;

    /** How often a rival was cut off. */
    @AuxCounters(AuxCounters.Type.EVENTS)
    @org.openjdk.jmh.annotations.State(Scope.Thread)
    public static class Outcome {
        /** Of so many measured runs; 0 if all have finished. */
        public int cutOff;

        private BigInteger of(BigInteger counted, BigInteger total) {
            if (counted.signum() < 0) {
                cutOff++;
            } else if (!counted.equals(total)) {
                throw new IllegalStateException("%s counted, not %s".formatted(counted, total));
            }
            return counted;
        }
    }

    /** Sets the task. */
    @Setup(Level.Trial)
    public void set() {
        int strokes = Integer.parseInt(size.substring(0, size.indexOf('x')));
        int sounds = Integer.parseInt(size.substring(size.indexOf('x') + 1));
        Kit kit = BuiltInKits.load(sounds > 12 ? "marimba" : "extended");
        reach = sounds > 12 ? 20 : 60;
        letters = "RLRRLRLL".repeat(8).substring(0, strokes);
        recipe = Recipe.plain(Sticking.parse(letters), kit);
        choices = Tasks.hands(kit, sounds);
        rules = List.of(new Rule.Reach(reach), Rule.NoCrossing.usual());
        if (loopAndSurfaces) {
            rules = Tasks.and(Tasks.and(rules, new Rule.Loop()), new Rule.Surfaces(LEAST, MOST));
        }
        surfaces = choices.of(Letter.R).stream().map(kit::surfaceOf).toList();
        total = engine();
    }

    /** The engine. */
    @Benchmark
    public BigInteger engine() {
        return Possibilities.of(recipe, choices, rules).total();
    }

    private boolean reaches(int from, int to) {
        return surfaces.get(from).distanceTo(surfaces.get(to)) <= reach + 1e-9;
    }

    private boolean uncrossed(int right, int left) {
        return surfaces.get(left).x() - surfaces.get(right).x() <= Rule.NoCrossing.TOLERANCE + 1e-9;
    }

    /**
     * Where the hands stand, and in a loop where they began and what they struck.
     *
     * @param right the right hand's surface; negative for nowhere yet
     * @param left the left hand's
     * @param firstRight the right hand's first; negative if nobody asks
     * @param firstLeft the left hand's first
     * @param struck surfaces as bits; 0 if nobody asks
     */
    private record Standing(int right, int left, int firstRight, int firstLeft, int struck) {}

    /** Where a stroke leads; null if the rules do not allow it. */
    private @Nullable Standing follow(char letter, Standing at, int next) {
        boolean isRight = letter == 'R';
        int from = isRight ? at.right : at.left;
        int right = isRight ? next : at.right;
        int left = isRight ? at.left : next;
        if ((from >= 0 && !reaches(from, next))
                || (right >= 0 && left >= 0 && !uncrossed(right, left))) {
            return null;
        }
        if (!loopAndSurfaces) {
            return new Standing(right, left, -1, -1, 0);
        }
        int struck = at.struck | 1 << next;
        return Integer.bitCount(struck) > MOST
                ? null
                : new Standing(
                        right,
                        left,
                        at.firstRight < 0 ? right : at.firstRight,
                        at.firstLeft < 0 ? left : at.firstLeft,
                        struck);
    }

    /** Whether a pattern may end so: each hand can go on to its first surface. */
    private boolean ends(Standing at) {
        // Both tasks begin with R, L: then only the first R meets the left hand's last place.
        return !loopAndSurfaces
                || (Integer.bitCount(at.struck) >= LEAST
                        && reaches(at.right, at.firstRight)
                        && reaches(at.left, at.firstLeft)
                        && uncrossed(at.firstRight, at.left));
    }

    private static Standing start() {
        return new Standing(-1, -1, -1, -1, 0);
    }

    private boolean late() {
        return System.nanoTime() > deadline;
    }

    /** The rival that finishes: states are where the hands stand, one layer for each stroke. */
    @Benchmark
    public BigInteger automaton(Outcome outcome) {
        return outcome.of(automaton(), total);
    }

    private BigInteger automaton() {
        deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(LIMIT_SECONDS);
        Map<Standing, State> layer = new HashMap<>();
        State first = new State();
        layer.put(start(), first);
        for (int i = 0; i < letters.length(); i++) {
            Map<Standing, State> next = new HashMap<>();
            for (Map.Entry<Standing, State> entry : layer.entrySet()) {
                for (int s = 0; s < surfaces.size(); s++) {
                    Standing to = follow(letters.charAt(i), entry.getKey(), s);
                    if (to != null) {
                        State target = next.computeIfAbsent(to, any -> new State());
                        entry.getValue().addTransition(new Transition((char) ('a' + s), target));
                    }
                }
                if (late()) {
                    return BigInteger.ONE.negate();
                }
            }
            layer = next;
        }
        layer.forEach((at, state) -> state.setAccept(ends(at)));
        Automaton automaton = new Automaton();
        automaton.setInitialState(first);
        automaton.setDeterministic(true);
        automaton.minimize();
        return words(automaton.getInitialState(), new HashMap<>());
    }

    private static BigInteger words(State state, Map<State, BigInteger> known) {
        BigInteger before = known.get(state);
        if (before != null) {
            return before;
        }
        BigInteger sum = state.isAccept() ? BigInteger.ONE : BigInteger.ZERO;
        for (Transition transition : state.getTransitions()) {
            long letters = transition.getMax() - transition.getMin() + 1L;
            sum = sum.add(words(transition.getDest(), known).multiply(BigInteger.valueOf(letters)));
        }
        known.put(state, sum);
        return sum;
    }

    /** The constraint solver: tables of allowed pairs, all solutions visited. */
    @Benchmark
    public BigInteger solver(Outcome outcome) {
        return outcome.of(solver(), total);
    }

    private BigInteger solver() {
        Model model = new Model();
        IntVar[] places = model.intVarArray("place", letters.length(), 0, surfaces.size() - 1);
        Tuples reachable = new Tuples(true);
        Tuples beside = new Tuples(true);
        for (int one = 0; one < surfaces.size(); one++) {
            for (int other = 0; other < surfaces.size(); other++) {
                if (reaches(one, other)) {
                    reachable.add(one, other);
                }
                if (uncrossed(one, other)) {
                    beside.add(one, other);
                }
            }
        }
        for (int i = 1; i < letters.length(); i++) {
            int same = letters.lastIndexOf(letters.charAt(i), i - 1);
            int opposite = letters.lastIndexOf(letters.charAt(i) == 'R' ? 'L' : 'R', i - 1);
            if (same >= 0) {
                model.table(places[same], places[i], reachable).post();
            }
            if (opposite >= 0) {
                boolean right = letters.charAt(i) == 'R';
                model.table(places[right ? i : opposite], places[right ? opposite : i], beside)
                        .post();
            }
        }
        if (loopAndSurfaces) {
            int lastRight = letters.lastIndexOf('R');
            int lastLeft = letters.lastIndexOf('L');
            model.table(places[lastRight], places[0], reachable).post();
            model.table(places[lastLeft], places[1], reachable).post();
            model.table(places[0], places[lastLeft], beside).post();
            model.nValues(places, model.intVar(LEAST, MOST)).post();
        }
        model.getSolver().limitTime(LIMIT_SECONDS * 1000L);
        long count = 0;
        while (model.getSolver().solve()) {
            count++;
        }
        return model.getSolver().isStopCriterionMet() ? BigInteger.ONE.negate() : big(count);
    }

    /** Plain enumeration: every assignment that keeps the rules, stroke by stroke. */
    @Benchmark
    public BigInteger enumeration(Outcome outcome) {
        return outcome.of(enumeration(), total);
    }

    private BigInteger enumeration() {
        deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(LIMIT_SECONDS);
        return big(enumerate(0, start()));
    }

    private long enumerate(int stroke, Standing at) {
        if (stroke == letters.length()) {
            return ends(at) ? 1 : 0;
        }
        long sum = 0;
        for (int s = 0; s < surfaces.size(); s++) {
            Standing next = follow(letters.charAt(stroke), at, s);
            if (next != null) {
                long rest = enumerate(stroke + 1, next);
                if (rest < 0 || late()) {
                    return -1;
                }
                sum += rest;
            }
        }
        return sum;
    }

    private static BigInteger big(long count) {
        return BigInteger.valueOf(count);
    }
}
