package org.kitweft.bench;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.kitweft.explore.search.Answer;
import org.kitweft.explore.search.Found;
import org.kitweft.explore.search.RandomRecipes;
import org.kitweft.explore.search.SearchSpace;
import org.kitweft.explore.search.StickingSearch;
import org.kitweft.explore.search.Strike;
import org.kitweft.explore.search.Target;
import org.kitweft.groove.Grid;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Catalogue;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Recovering a random groove of two hands with its sticking among the answers, against plain
 * enumeration: weave every sticking of the catalogue until the original comes by. The rival knows
 * that only hands play; the search does not.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
public class StickingSearchBenchmark {
    private static final int GROOVES = 1000;

    /** Strokes of the grooves. */
    @Param({"8", "16"})
    public int strokes;

    private final Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
    private final List<Sticking> stickings = new ArrayList<>();
    private final List<Target> targets = new ArrayList<>();
    private int next;

    /** Makes the grooves, the same for both. */
    @Setup
    public void weaveGrooves() {
        SplittableRandom random = new SplittableRandom(1);
        List<SoundName> sounds = kit.soundsFor(Voicing.limbOf(Letter.R, kit));
        Catalogue catalogue = new Catalogue(strokes);
        for (int i = 0; i < GROOVES; i++) {
            Sticking sticking = catalogue.at(BigInteger.valueOf(random.nextInt(1 << strokes)));
            List<SoundName> struck = new ArrayList<>();
            for (int stroke = 0; stroke < strokes; stroke++) {
                struck.add(sounds.get(random.nextInt(sounds.size())));
            }
            stickings.add(sticking);
            targets.add(Target.of(voiced(sticking, struck).weave()));
        }
    }

    /** The search: all answers as a trellis, the original asked for, the easiest written out. */
    @Benchmark
    public Optional<Answer> search() {
        int i = next++ % GROOVES;
        Found found =
                (Found)
                        StickingSearch.search(
                                targets.get(i), SearchSpace.WHOLE.withStrokes(strokes));
        return found.first(1).isEmpty() ? Optional.empty() : found.with(stickings.get(i));
    }

    /** The rival. */
    @Benchmark
    public Optional<Recipe> plainEnumeration() {
        int i = next++ % GROOVES;
        List<SoundName> struck =
                targets.get(i).steps().stream().limit(strokes).map(this::only).toList();
        return new Catalogue(strokes)
                .stream()
                        .map(sticking -> voiced(sticking, struck))
                        .filter(recipe -> Target.of(recipe.weave()).equals(targets.get(i)))
                        .filter(recipe -> recipe.sticking().equals(stickings.get(i)))
                        .findFirst();
    }

    private SoundName only(List<Strike> strikes) {
        return strikes.get(0).sound();
    }

    /** The thousand grooves of the test that each is recovered, feet and layers among them. */
    @State(Scope.Benchmark)
    public static class Thousand {
        private final List<Recipe> originals = new ArrayList<>();
        private final List<Target> grooves = new ArrayList<>();
        private int turn;

        /** Weaves them; nothing is searched yet. */
        @Setup
        public void weave() {
            RandomRecipes recipes = new RandomRecipes(3);
            for (int i = 0; i < GROOVES; i++) {
                originals.add(recipes.next(16));
                grooves.add(Target.of(originals.get(i).weave()));
            }
        }
    }

    /**
     * Each of the thousand once, in a program that has just started: the first sample is the cold
     * one, the largest the worst. {@code strokes} does not matter to it.
     */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Fork(3)
    @Warmup(iterations = 0)
    @Measurement(iterations = GROOVES)
    public Optional<Answer> eachOnce(Thousand thousand) {
        int i = thousand.turn++ % GROOVES;
        Found found =
                (Found)
                        StickingSearch.search(
                                thousand.grooves.get(i), SearchSpace.WHOLE.withStrokes(16));
        return found.first(1).isEmpty()
                ? Optional.empty()
                : found.with(thousand.originals.get(i).sticking());
    }

    /** The sticking with each hand on the sounds that fall to it. */
    private Recipe voiced(Sticking sticking, List<SoundName> struck) {
        Map<Letter, List<SoundName>> paths = new EnumMap<>(Letter.class);
        for (int i = 0; i < sticking.size(); i++) {
            Letter letter = sticking.struck().get(i).letter();
            paths.computeIfAbsent(letter, none -> new ArrayList<>()).add(struck.get(i));
        }
        Map<Letter, LetterVoicing> letters = new EnumMap<>(Letter.class);
        paths.forEach(
                (letter, path) ->
                        letters.put(letter, LetterVoicing.on(Voicing.limbOf(letter, kit), path)));
        return new Recipe(
                sticking,
                kit,
                new Voicing(letters, new TreeMap<>(), List.of()),
                Grid.SIXTEENTHS,
                OptionalInt.of(1));
    }
}
