package org.kitweft.explore.search;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * All ways to play a groove, none of them written out until it is asked for: their number grows
 * exponentially with the strokes. Exact: {@link #with} tells for any sticking whether it is among
 * them, and {@link #easiestFirst} shows each once. An answer is a sticking together with who plays
 * what; the paths are then written as briefly as they can be. Not safe for several threads at once.
 */
public final class Found implements SearchOutcome {
    private final Heard heard;
    private final Plans plans;
    private final int fewest;
    private final List<Opened> simplest;

    private record Opened(Plan plan, Trellis trellis) {}

    /** Made by a search, which the watch may still stop. */
    Found(Heard heard, Plans plans, int fewest, SearchWatch watch) {
        this.heard = heard;
        this.plans = plans;
        this.fewest = fewest;
        this.simplest = opened(fewest, watch);
    }

    private List<Opened> opened(int additions, SearchWatch watch) {
        BitSet all = new BitSet();
        all.set(0, heard.strokes());
        Pace stopping = new Pace(watch, 0);
        List<Opened> opened = new ArrayList<>();
        for (Plan plan : plans.covering(all, additions, stopping)) {
            stopping.step();
            Trellis trellis = Trellis.of(plan, heard);
            if (!trellis.isEmpty()) {
                opened.add(new Opened(plan, trellis));
            }
        }
        return opened;
    }

    /** The fewest additions that an answer has. */
    public int fewestAdditions() {
        return fewest;
    }

    /** How many answers have the fewest additions; exact at any size. */
    public BigInteger countOfSimplest() {
        return simplest.stream()
                .map(opened -> opened.trellis.count())
                .reduce(BigInteger.ZERO, BigInteger::add);
    }

    /**
     * For each stroke the letters it has in some answer of the fewest additions; none where it can
     * only be a rest.
     */
    public List<Set<Letter>> lettersOfSimplest() {
        List<Set<Letter>> letters = new ArrayList<>();
        for (int stroke = 0; stroke < heard.strokes(); stroke++) {
            Set<Letter> here = EnumSet.noneOf(Letter.class);
            for (Opened opened : simplest) {
                here.addAll(opened.trellis.letters(stroke));
            }
            letters.add(Collections.unmodifiableSet(here));
        }
        return letters;
    }

    /**
     * The simplest, then easiest answer that has the letters and rests of a given sticking; its
     * dynamics and ornaments are the groove's. Empty if that sticking cannot produce the groove, or
     * has another length.
     */
    public Optional<Answer> with(Sticking sticking) {
        if (sticking.size() != heard.strokes()) {
            return Optional.empty();
        }
        List<Optional<Letter>> letters =
                sticking.strokes().stream()
                        .map(stroke -> stroke.struck().map(struck -> struck.letter()))
                        .toList();
        for (int additions = fewest; additions <= plans.most(); additions++) {
            Optional<Answer> answer =
                    new Merge(
                                    plans.forLetters(letters, additions).stream()
                                            .map(
                                                    plan ->
                                                            new Opened(
                                                                    plan,
                                                                    Trellis.of(
                                                                            plan, heard, letters)))
                                            .toList())
                            .first();
            if (answer.isPresent()) {
                return answer;
            }
        }
        return Optional.empty();
    }

    /** The first so many answers, or all if there are fewer. */
    public List<Answer> first(int most) {
        List<Answer> first = new ArrayList<>();
        Iterator<Answer> answers = easiestFirst();
        while (first.size() < most && answers.hasNext()) {
            first.add(answers.next());
        }
        return first;
    }

    /**
     * All answers, one at a time: those with fewer additions first, among these the ones with less
     * effort; equal ones always in the same order.
     */
    public Iterator<Answer> easiestFirst() {
        return easiestFirst(SearchWatch.NONE);
    }

    /**
     * The same, for someone who may lose patience: {@code hasNext} also says that there is no more
     * when the watch stops it, and goes on where it was when asked again.
     */
    public Iterator<Answer> easiestFirst(SearchWatch watch) {
        return new Iterator<>() {
            private int additions = fewest;
            private Merge now = new Merge(simplest);

            @Override
            public boolean hasNext() {
                try {
                    while (!now.hasNext() && additions < plans.most()) {
                        now = new Merge(opened(additions + 1, watch));
                        additions++;
                    }
                } catch (CancellationException stopped) {
                    return false;
                }
                return now.hasNext();
            }

            @Override
            public Answer next() {
                if (!hasNext()) {
                    throw new NoSuchElementException("all answers have been seen");
                }
                return now.next();
            }
        };
    }

    /** The answers of several plans in one order. */
    private final class Merge {
        private record Head(Plan plan, int order, Trellis.Path path, Iterator<Trellis.Path> rest) {
            int points() {
                return path.points();
            }
        }

        private final PriorityQueue<Head> heads =
                new PriorityQueue<>(
                        Comparator.comparingInt(Head::points).thenComparingInt(Head::order));

        Merge(List<Opened> opened) {
            for (int i = 0; i < opened.size(); i++) {
                push(opened.get(i).plan, i, opened.get(i).trellis.easiestFirst());
            }
        }

        private void push(Plan plan, int order, Iterator<Trellis.Path> paths) {
            if (paths.hasNext()) {
                heads.add(new Head(plan, order, paths.next(), paths));
            }
        }

        boolean hasNext() {
            return !heads.isEmpty();
        }

        Optional<Answer> first() {
            return hasNext() ? Optional.of(next()) : Optional.empty();
        }

        Answer next() {
            Head head = heads.remove();
            push(head.plan, head.order, head.rest);
            return AnswerWriter.write(head.plan, heard, head.path);
        }
    }
}
