package org.kitweft.explore.search;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.kitweft.explore.difficulty.Effort;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;

/**
 * All answers of one plan, none of them written out: a node for each way the limbs can stand after
 * so many strokes, an edge for each choice of the next. A node also knows which additions have been
 * used, for an answer uses all of its plan's. The effort is that of the first pass, what layers
 * strike meanwhile included.
 */
final class Trellis {
    private static final int UNREACHABLE = Integer.MAX_VALUE;
    private static final int USED_AT = 60;

    private final List<Map<Long, Node>> stages = new ArrayList<>();
    private final Node start = new Node();

    private static final class Node {
        private final List<Edge> edges = new ArrayList<>();
        private int toGo = UNREACHABLE;
        private Optional<BigInteger> ways = Optional.empty();
    }

    private record Edge(Choice choice, int points, Node to) {}

    private record Option(Choice choice, long strikes, long uses) {}

    /** One answer: what each stroke is, and the effort in points. */
    record Path(List<Choice> choices, int points) {}

    /**
     * @param letters the letter of each stroke, where the sticking is given; null: any
     */
    private Trellis(Plan plan, Heard heard, Optional<List<Optional<Letter>>> letters) {
        Effort effort = new Effort(heard.target().kit());
        List<Addition> additions = plan.additions();
        long all = (1L << additions.size()) - 1;
        long usedAlready = (1L << plan.layering().layers().size()) - 1;
        Map<Long, Node> stage = new LinkedHashMap<>();
        stage.put(Effort.START | usedAlready << USED_AT, start);
        stages.add(stage);
        for (int stroke = 0; stroke < heard.strokes(); stroke++) {
            List<Option> options = options(plan, additions, heard, effort, stroke, letters);
            Map<Long, Node> next = new LinkedHashMap<>();
            for (Map.Entry<Long, Node> from : stage.entrySet()) {
                long stance = from.getKey() & ((1L << USED_AT) - 1);
                long used = from.getKey() >>> USED_AT;
                for (Option option : options) {
                    long to =
                            effort.after(stance, option.strikes) | (used | option.uses) << USED_AT;
                    from.getValue()
                            .edges
                            .add(
                                    new Edge(
                                            option.choice,
                                            effort.points(stance, option.strikes),
                                            next.computeIfAbsent(to, none -> new Node())));
                }
            }
            stages.add(next);
            stage = next;
        }
        stage.forEach((key, node) -> node.toGo = key >>> USED_AT == all ? 0 : UNREACHABLE);
        for (int stroke = heard.strokes() - 1; stroke >= 0; stroke--) {
            for (Node node : stages.get(stroke).values()) {
                node.edges.removeIf(edge -> edge.to.toGo == UNREACHABLE);
                for (Edge edge : node.edges) {
                    node.toGo = Math.min(node.toGo, edge.points + edge.to.toGo);
                }
            }
        }
    }

    static Trellis of(Plan plan, Heard heard) {
        return new Trellis(plan, heard, Optional.empty());
    }

    static Trellis of(Plan plan, Heard heard, List<Optional<Letter>> letters) {
        return new Trellis(plan, heard, Optional.of(letters));
    }

    private static List<Option> options(
            Plan plan,
            List<Addition> additions,
            Heard heard,
            Effort effort,
            int stroke,
            Optional<List<Optional<Letter>>> letters) {
        List<Option> options = new ArrayList<>();
        long layered = layered(plan, heard, effort, stroke);
        for (Letter letter : Letter.values()) {
            boolean wanted =
                    letters.isEmpty() || letters.get().get(stroke).equals(Optional.of(letter));
            if (wanted && plan.strokesOf(letter).get(stroke)) {
                for (Choice choice : plan.layering().choices(stroke, letter, plan)) {
                    long strikes = layered;
                    for (Map.Entry<Limb, Integer> struck :
                            choice.passes().get(0).struck().entrySet()) {
                        strikes =
                                effort.with(
                                        strikes,
                                        struck.getKey(),
                                        heard.sounds().get(struck.getValue()));
                    }
                    options.add(new Option(choice, strikes, Uses.of(choice, additions, plan)));
                }
            }
        }
        boolean restWanted = letters.isEmpty() || letters.get().get(stroke).isEmpty();
        if (restWanted && plan.layering().silent().get(stroke)) {
            options.add(new Option(Choice.REST, layered, 0));
        }
        return options;
    }

    /** What the layers strike at the first step of a stroke. */
    private static long layered(Plan plan, Heard heard, Effort effort, int stroke) {
        long strikes = 0;
        for (Strike strike : heard.target().steps().get(heard.positions(stroke)[0])) {
            for (Addition addition : plan.layering().layers()) {
                if (addition instanceof Addition.Layered layer
                        && layer.sound().equals(strike.sound())) {
                    strikes = effort.with(strikes, layer.limb(), layer.sound());
                }
            }
        }
        return strikes;
    }

    /** Whether there is no answer. */
    boolean isEmpty() {
        return start.toGo == UNREACHABLE;
    }

    /** How many answers there are. */
    BigInteger count() {
        for (int stage = stages.size() - 1; stage >= 0; stage--) {
            for (Node node : stages.get(stage).values()) {
                if (node.ways.isEmpty()) {
                    BigInteger ways =
                            stage == stages.size() - 1 && node.toGo == 0
                                    ? BigInteger.ONE
                                    : BigInteger.ZERO;
                    for (Edge edge : node.edges) {
                        ways = ways.add(edge.to.ways.orElseThrow());
                    }
                    node.ways = Optional.of(ways);
                }
            }
        }
        return start.ways.orElseThrow();
    }

    /** The letters that a stroke has in some answer. Every edge that is left is part of one. */
    Set<Letter> letters(int stroke) {
        Set<Letter> letters = EnumSet.noneOf(Letter.class);
        for (Node node : stages.get(stroke).values()) {
            node.edges.forEach(edge -> edge.choice.letter().ifPresent(letters::add));
        }
        return letters;
    }

    /** All answers, the easiest first; equal ones always in the same order. */
    Iterator<Path> easiestFirst() {
        return new Walk();
    }

    /** An answer begun: how it came here, and the least it costs in the end. */
    private record Begun(
            Optional<Begun> before,
            Optional<Choice> last,
            Node at,
            int length,
            int spent,
            long number) {
        int least() {
            return spent + at.toGo;
        }

        List<Choice> choices() {
            List<Choice> choices = new ArrayList<>();
            Optional<Begun> part = Optional.of(this);
            while (part.isPresent()) {
                part.get().last.ifPresent(choices::add);
                part = part.get().before;
            }
            Collections.reverse(choices);
            return choices;
        }
    }

    /**
     * Best first with the exact rest of the way as its guide, so that no answer comes too early.
     */
    private final class Walk implements Iterator<Path> {
        private final PriorityQueue<Begun> open =
                new PriorityQueue<>(
                        Comparator.comparingInt(Begun::least)
                                .thenComparing(Begun::length, Comparator.reverseOrder())
                                .thenComparingLong(Begun::number));
        private long numbers;

        Walk() {
            if (!isEmpty()) {
                open.add(new Begun(Optional.empty(), Optional.empty(), start, 0, 0, 0));
            }
        }

        @Override
        public boolean hasNext() {
            return !open.isEmpty();
        }

        @Override
        public Path next() {
            while (!open.isEmpty()) {
                Begun begun = open.remove();
                if (begun.length == stages.size() - 1) {
                    return new Path(begun.choices(), begun.spent);
                }
                for (Edge edge : begun.at.edges) {
                    numbers++;
                    open.add(
                            new Begun(
                                    Optional.of(begun),
                                    Optional.of(edge.choice),
                                    edge.to,
                                    begun.length + 1,
                                    begun.spent + edge.points,
                                    numbers));
                }
            }
            throw new NoSuchElementException("all answers have been seen");
        }
    }
}
