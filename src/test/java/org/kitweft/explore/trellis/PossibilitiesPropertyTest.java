package org.kitweft.explore.trellis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.explore.reach.Travel;
import org.kitweft.explore.rule.Rule;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/** The engine agrees with a full listing: each rule alone, all pairs, and all rules together. */
class PossibilitiesPropertyTest {
    /** More on demand: {@code mvn test -Dtest=PossibilitiesPropertyTest -DargLine=-Dseeds=1000}. */
    private static final int SEEDS = Integer.getInteger("seeds", 30);

    static Stream<Long> seeds() {
        return IntStream.range(0, SEEDS).mapToObj(Long::valueOf);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithTheListing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SmallCase small = SmallCase.random(random);
        List<Rule> rules = small.rules(random);
        check(small, List.of(), random);
        for (int i = 0; i < rules.size(); i++) {
            check(small, List.of(rules.get(i)), random);
            for (int j = i + 1; j < rules.size(); j++) {
                check(small, List.of(rules.get(i), rules.get(j)), random);
            }
            List<Rule> without = new ArrayList<>(rules);
            without.remove(i);
            check(small, without, random);
        }
        check(small, rules, random);
    }

    private static void check(SmallCase small, List<Rule> rules, SplittableRandom random) {
        Listing listing = new Listing(small, rules);
        List<List<SoundName>> all = listing.variations();
        boolean narrow = random.nextBoolean();
        Possibilities possibilities = counted(small, rules, narrow, random.nextInt(4) == 0);
        String what = small + " under " + rules;

        assertThat(possibilities.total()).as(what).isEqualTo(all.size());
        assertThat(possibilities.strokes()).as(what).isEqualTo(listing.indices());
        assertThat(possibilities.from(BigInteger.ZERO).map(Variation::sounds))
                .as(what)
                .containsExactlyElementsOf(all);
        for (int k = 0; k < all.size(); k++) {
            assertThat(possibilities.get(BigInteger.valueOf(k)).sounds())
                    .as(what)
                    .isEqualTo(all.get(k));
            assertThat(possibilities.indexOf(all.get(k))).as(what).isEqualTo(k);
        }
        checkFaults(listing, all, possibilities, what);
        checkWays(all, possibilities, what);
        checkBest(listing, all, possibilities, Cost.TRAVEL, what);
        checkBest(listing, all, possibilities, whims(random.nextLong()), what);
        if (!all.isEmpty()) {
            List<SoundName> one = all.get(random.nextInt(all.size()));
            checkNeighbours(one, all, possibilities, what);
            Travel travel = possibilities.travel(one);
            assertThat(travel.totalCm())
                    .as(what)
                    .isEqualTo(listing.cost(one, Cost.TRAVEL) / 1e6, within(1e-4));
            long start = random.nextLong(all.size());
            assertThat(possibilities.from(BigInteger.valueOf(start)).limit(3).toList())
                    .as(what)
                    .first()
                    .isEqualTo(
                            new Variation(
                                    BigInteger.valueOf(start), all.get(Math.toIntExact(start))));
        }
    }

    /** In one of the ways in which the engine counts: all must agree with the listing. */
    private static Possibilities counted(
            SmallCase small, List<Rule> rules, boolean narrow, boolean bySets) {
        if (bySets) {
            return Possibilities.bySets(small.recipe(), small.choices(), rules, narrow);
        }
        return narrow
                ? Possibilities.of(small.recipe(), small.choices(), rules)
                : Possibilities.wide(small.recipe(), small.choices(), rules);
    }

    private static void checkFaults(
            Listing listing, List<List<SoundName>> all, Possibilities possibilities, String what) {
        assertThat(listing.assignments().stream().filter(s -> possibilities.fault(s).isEmpty()))
                .as(what)
                .containsExactlyElementsOf(all);
        Set<List<SoundName>> kept = Set.copyOf(all);
        listing.assignments().stream()
                .filter(s -> !kept.contains(s))
                .findFirst()
                .ifPresent(
                        s ->
                                assertThatThrownBy(() -> possibilities.indexOf(s))
                                        .hasMessageStartingWith(
                                                "these sounds are none of the variations: "));
    }

    private static void checkWays(
            List<List<SoundName>> all, Possibilities possibilities, String what) {
        List<Map<SoundName, BigInteger>> ways = List.copyOf(possibilities.waysPerStroke().values());
        for (int i = 0; i < ways.size(); i++) {
            Map<SoundName, BigInteger> expected = new LinkedHashMap<>();
            possibilities.options().get(i).forEach(s -> expected.put(s, BigInteger.ZERO));
            for (List<SoundName> sounds : all) {
                expected.merge(sounds.get(i), BigInteger.ONE, BigInteger::add);
            }
            assertThat(ways.get(i)).as(what).isEqualTo(expected);
        }
    }

    private static void checkBest(
            Listing listing,
            List<List<SoundName>> all,
            Possibilities possibilities,
            Cost cost,
            String what) {
        List<List<SoundName>> expected =
                all.stream().sorted(Comparator.comparingLong(s -> listing.cost(s, cost))).toList();
        int most = 60;
        assertThat(possibilities.best(cost).limit(most).map(Variation::sounds))
                .as(what)
                .containsExactlyElementsOf(expected.subList(0, Math.min(most, expected.size())));
        // Small cases are found at once: here the costs that know the surfaces are asked anyway.
        assertThat(possibilities.best(cost, () -> false, 0).limit(most).map(Variation::sounds))
                .as(what)
                .containsExactlyElementsOf(expected.subList(0, Math.min(most, expected.size())));
    }

    /** A cost that has no sense, is negative at times, and whole: sums round the same anyhow. */
    private static Cost whims(long seed) {
        return new Cost() {
            @Override
            public double stroke(int index, SoundName sound) {
                return new SplittableRandom(seed + index * 31L + sound.hashCode()).nextInt(-2, 5);
            }

            @Override
            public double move(Limb limb, Surface from, Surface to, long ticks) {
                int what = limb.ordinal() * 7919 + from.id().hashCode() * 31 + to.id().hashCode();
                return new SplittableRandom(seed ^ what).nextInt(0, 4);
            }
        };
    }

    private static void checkNeighbours(
            List<SoundName> one,
            List<List<SoundName>> all,
            Possibilities possibilities,
            String what) {
        List<List<SoundName>> expected =
                all.stream()
                        .filter(
                                other ->
                                        IntStream.range(0, one.size())
                                                        .filter(
                                                                i ->
                                                                        !one.get(i)
                                                                                .equals(
                                                                                        other.get(
                                                                                                i)))
                                                        .count()
                                                == 1)
                        .toList();
        assertThat(possibilities.neighbours(one).stream().map(Variation::sounds))
                .as(what)
                .containsExactlyElementsOf(expected);
    }
}
