package org.kitweft.pattern;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All stickings of one length in right and left hand, in the order of a dictionary with R before L:
 * for two strokes RR, RL, LR, LL. Nothing is stored; any length up to {@link Sticking#MAX_STROKES}
 * can be walked or indexed.
 *
 * <p>Filters are in {@link StickingTraits}.
 *
 * @param strokes the length, from 1
 */
public record Catalogue(int strokes) {

    public Catalogue {
        if (strokes < 1 || strokes > Sticking.MAX_STROKES) {
            throw new IllegalArgumentException(
                    "a sticking has 1 to %d strokes, not %d"
                            .formatted(Sticking.MAX_STROKES, strokes));
        }
    }

    /** How many there are: 2 to the power of the length. */
    public BigInteger total() {
        return BigInteger.ONE.shiftLeft(strokes);
    }

    /**
     * The sticking at a place in the order.
     *
     * @param index from 0, below {@link #total()}
     */
    public Sticking at(BigInteger index) {
        if (index.signum() < 0 || index.compareTo(total()) >= 0) {
            throw new IllegalArgumentException(
                    "of %d-stroke stickings there are %s, none has the index %s"
                            .formatted(strokes, total(), index));
        }
        return new Sticking(
                IntStream.range(0, strokes)
                        .mapToObj(i -> index.testBit(strokes - 1 - i) ? Letter.L : Letter.R)
                        .map(Stroke::of)
                        .toList());
    }

    /** All of them in order, one at a time. */
    public Stream<Sticking> stream() {
        return Stream.iterate(
                        BigInteger.ZERO,
                        index -> index.compareTo(total()) < 0,
                        index -> index.add(BigInteger.ONE))
                .map(this::at);
    }

    /**
     * Those of them in which neither hand strokes more than {@code longest} times in a row, read
     * once from start to end; in order. Whole stretches of the order that break this are leapt
     * over, so that the few single-stroke stickings of any length are found at once.
     */
    public Stream<Sticking> withRunsUpTo(int longest) {
        if (longest < 1) {
            throw new IllegalArgumentException(
                    "runs of up to %d: expected 1 or more".formatted(longest));
        }
        return Stream.iterate(
                        leap(BigInteger.ZERO, longest),
                        index -> index.compareTo(total()) < 0,
                        index -> leap(index.add(BigInteger.ONE), longest))
                .map(this::at);
    }

    /** The first index from this one on whose runs are short enough, or the total. */
    private BigInteger leap(BigInteger from, int longest) {
        BigInteger index = from;
        int tooFar = endOfRunOver(index, longest);
        while (tooFar >= 0 && index.compareTo(total()) < 0) {
            int rest = strokes - 1 - tooFar;
            index = index.shiftRight(rest).add(BigInteger.ONE).shiftLeft(rest);
            tooFar = endOfRunOver(index, longest);
        }
        return index;
    }

    /** The first stroke, from 0, that makes a run longer than allowed, or -1. */
    private int endOfRunOver(BigInteger index, int longest) {
        int run = 0;
        for (int i = 0; i < strokes; i++) {
            int bit = strokes - 1 - i;
            run = i > 0 && index.testBit(bit) == index.testBit(bit + 1) ? run + 1 : 1;
            if (run > longest) {
                return i;
            }
        }
        return -1;
    }

    /**
     * The stickings whose first strokes are those of {@code start}; fewer to walk than filtering.
     */
    public Stream<Sticking> startingWith(List<Letter> start) {
        if (start.isEmpty()) {
            return stream();
        }
        if (start.size() > strokes || !start.stream().allMatch(Letter::isOneHand)) {
            return Stream.empty();
        }
        if (start.size() == strokes) {
            return Stream.of(new Sticking(start.stream().map(Stroke::of).toList()));
        }
        return new Catalogue(strokes - start.size())
                .stream()
                        .map(
                                rest -> {
                                    List<Stroke> all =
                                            new ArrayList<>(
                                                    start.stream().map(Stroke::of).toList());
                                    all.addAll(rest.strokes());
                                    return new Sticking(all);
                                });
    }
}
