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
