package org.kitweft.pattern;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Stickings of every kind of stroke, the same for the same seed. */
public final class RandomStickings {
    private RandomStickings() {}

    /** So many stickings of 1 to {@code longest} strokes. */
    public static Stream<Sticking> of(long seed, int count, int longest) {
        Random random = new Random(seed);
        return IntStream.range(0, count)
                .mapToObj(
                        i ->
                                new Sticking(
                                        IntStream.rangeClosed(0, random.nextInt(longest))
                                                .mapToObj(j -> stroke(random))
                                                .toList()));
    }

    private static Stroke stroke(Random random) {
        if (random.nextInt(5) == 0) {
            return Stroke.REST;
        }
        Letter letter = Letter.values()[random.nextInt(Letter.values().length)];
        Dynamic dynamic = Dynamic.values()[random.nextInt(Dynamic.values().length)];
        List<Ornament> possible =
                letter.isOneHand()
                        ? List.of(Ornament.values())
                        : List.of(Ornament.NONE, Ornament.BUZZ);
        return Stroke.of(letter, dynamic, possible.get(random.nextInt(possible.size())));
    }
}
