package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.kitweft.explore.Choices;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.reach.Travel;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.SoundName;

/**
 * All variations of a sticking that choices and rules allow: how many there are, and which.
 *
 * <p>Counted exactly without listing them. Variations are numbered from 0 in the order of the first
 * stroke's choices, then the second's, and so on. Immutable, and safe for use by several threads.
 *
 * <p>What counts as a stroke: every struck stroke of the sticking whose letter is not tacet in the
 * recipe's voicing. The voicing also says which limb plays a letter; a letter without an entry is
 * played by its own limb, B without one by the limbs of R and L, with one by both hands. Single
 * strokes, layers, doublings and grace notes of the voicing take no part: rules look at the strokes
 * of the sticking only. Whether a limb can strike a sound at all is the voicing's and the kit's
 * matter; {@link Choices#everything} offers only what it can.
 */
public final class Possibilities {
    private final Recipe recipe;
    private final Choices choices;
    private final List<Rule> rules;
    private final ReachModel model;
    private final Plan plan;
    private final Family family;
    private final Ranking ranking;

    private Possibilities(
            Recipe recipe,
            Choices choices,
            List<Rule> rules,
            ReachModel model,
            boolean narrow,
            boolean blending) {
        this.recipe = recipe;
        this.choices = choices;
        this.rules = List.copyOf(rules);
        this.model = model;
        plan = new Plan(recipe, choices, this.rules, model);
        boolean fits = narrow && plan.bound().bitLength() < Long.SIZE;
        family = new Family(plan, SurfaceSets.of(plan), fits, blending);
        ranking = new Ranking(family);
    }

    /** As {@link #of(Recipe, Choices, List, ReachModel)}, with the published reach model. */
    public static Possibilities of(Recipe recipe, Choices choices, List<Rule> rules) {
        return of(recipe, choices, rules, ReachModel.PUBLISHED);
    }

    /**
     * Counts the variations.
     *
     * @param recipe the sticking, the kit, the limbs of the voicing, and the grid for the time
     *     between strokes; bars do not matter
     * @param choices the sounds of each letter that is played
     * @param rules those to keep, in any combination
     * @param model what the tempo rule asks
     * @throws IllegalArgumentException naming a letter without choices, a sound that the kit lacks,
     *     a pin that is on no played stroke, or a surfaces rule that would take too many sets of
     *     surfaces to count
     */
    public static Possibilities of(
            Recipe recipe, Choices choices, List<Rule> rules, ReachModel model) {
        return new Possibilities(recipe, choices, rules, model, true, true);
    }

    /** The same, counted with numbers of any size even where 64 bits do: for tests. */
    static Possibilities wide(Recipe recipe, Choices choices, List<Rule> rules) {
        return new Possibilities(recipe, choices, rules, ReachModel.PUBLISHED, false, true);
    }

    /** The same, read set by set even where sets of surfaces can be blended: for tests. */
    static Possibilities bySets(Recipe recipe, Choices choices, List<Rule> rules, boolean narrow) {
        return new Possibilities(recipe, choices, rules, ReachModel.PUBLISHED, narrow, false);
    }

    /** What it was made of: the recipe. */
    public Recipe recipe() {
        return recipe;
    }

    /** What it was made of: the choices. */
    public Choices choices() {
        return choices;
    }

    /** What it was made of: the rules. */
    public List<Rule> rules() {
        return rules;
    }

    /** How many there are: the count {@code underRules}. */
    public BigInteger total() {
        return family.total;
    }

    /** Indices in the sticking, from 0 and rests counted, of the strokes that are played. */
    public List<Integer> strokes() {
        return plan.played.stream().map(Played::index).toList();
    }

    /** The sounds that each played stroke may choose from, pins and allowed sounds considered. */
    public List<List<SoundName>> options() {
        return plan.played.stream().map(Played::sounds).toList();
    }

    /**
     * The variation of an index.
     *
     * @throws IllegalArgumentException if the index is negative or not below the total
     */
    public Variation get(BigInteger index) {
        checkIndex(index);
        return new Variation(index, sounds(ranking.at(index)));
    }

    private void checkIndex(BigInteger index) {
        if (index.signum() < 0 || index.compareTo(total()) >= 0) {
            throw new IllegalArgumentException(
                    total().signum() == 0
                            ? "variation %d: there are none, no variation keeps all rules"
                                    .formatted(index)
                            : "variation %d: expected an index from 0 to %d"
                                    .formatted(index, total().subtract(BigInteger.ONE)));
        }
    }

    /**
     * The index of a variation.
     *
     * @throws IllegalArgumentException if it breaks a rule, with the reason
     */
    public BigInteger indexOf(List<SoundName> sounds) {
        Optional<String> fault = fault(sounds);
        if (fault.isPresent()) {
            throw new IllegalArgumentException(
                    "these sounds are none of the variations: " + fault.get());
        }
        return ranking.indexOf(optionsOf(sounds));
    }

    /** Why sounds, one for each played stroke, are no variation; empty if they are. */
    public Optional<String> fault(List<SoundName> sounds) {
        if (sounds.size() != plan.played.size()) {
            return Optional.of(
                    "%d sounds, expected one for each of %d strokes"
                            .formatted(sounds.size(), plan.played.size()));
        }
        int[] options = optionsOf(sounds);
        for (int i = 0; i < options.length; i++) {
            if (options[i] < 0) {
                return Optional.of(
                        "stroke %d cannot choose %s"
                                .formatted(plan.played.get(i).index() + 1, sounds.get(i).text()));
            }
        }
        return Check.fault(plan, options);
    }

    private int[] optionsOf(List<SoundName> sounds) {
        return IntStream.range(0, sounds.size())
                .map(i -> plan.played.get(i).sounds().indexOf(sounds.get(i)))
                .toArray();
    }

    private List<SoundName> sounds(int[] options) {
        SoundName[] sounds = new SoundName[options.length];
        for (int i = 0; i < options.length; i++) {
            sounds[i] = plan.played.get(i).sounds().get(options[i]);
        }
        return List.of(sounds);
    }

    /**
     * All variations from an index on, one after the other, made as they are asked for. From the
     * total on there are none.
     *
     * @throws IllegalArgumentException if the index is negative or beyond the total
     */
    public Stream<Variation> from(BigInteger index) {
        if (index.equals(total())) {
            return Stream.empty();
        }
        checkIndex(index);
        Iterator<int[]> all = ranking.from(index);
        return stream(
                new Iterator<Variation>() {
                    private BigInteger next = index;

                    @Override
                    public boolean hasNext() {
                        return all.hasNext();
                    }

                    @Override
                    public Variation next() {
                        Variation variation = new Variation(next, sounds(all.next()));
                        next = next.add(BigInteger.ONE);
                        return variation;
                    }
                });
    }

    /**
     * So many variations, each drawn from all with the same chance and put back; the same seed
     * gives the same ones.
     *
     * @throws IllegalArgumentException if the count is negative, or there are no variations
     */
    public List<Variation> sample(int count, long seed) {
        if (count < 0) {
            throw new IllegalArgumentException("%d samples: expected 0 or more".formatted(count));
        }
        checkIndex(BigInteger.ZERO);
        SplittableRandom random = new SplittableRandom(seed);
        BigInteger[] indices = new BigInteger[count];
        Integer[] order = new Integer[count];
        for (int i = 0; i < count; i++) {
            indices[i] =
                    family.narrow
                            ? BigInteger.valueOf(random.nextLong(total().longValueExact()))
                            : below(total(), random);
            order[i] = i;
        }
        // Found in the order of their indices: neighbours are read from the same tables.
        Arrays.sort(order, Comparator.comparing(i -> indices[i]));
        List<Variation> found =
                family.sideBySide(
                        count,
                        i -> {
                            BigInteger index = indices[order[i]];
                            return new Variation(index, sounds(ranking.at(index)));
                        });
        Variation[] drawn = new Variation[count];
        for (int i = 0; i < count; i++) {
            drawn[order[i]] = found.get(i);
        }
        return List.of(drawn);
    }

    /** A number from 0 to below a bound, each with the same chance: too great ones are redrawn. */
    private static BigInteger below(BigInteger bound, SplittableRandom random) {
        int bits = bound.subtract(BigInteger.ONE).bitLength();
        byte[] bytes = new byte[bits / 8 + 1];
        while (true) {
            random.nextBytes(bytes);
            bytes[0] = (byte) (bytes[0] & ((1 << bits % 8) - 1));
            BigInteger drawn = new BigInteger(1, bytes);
            if (drawn.compareTo(bound) < 0) {
                return drawn;
            }
        }
    }

    /**
     * Variations from the cheapest on, made as they are asked for; equal costs in the order of the
     * variations.
     */
    public Stream<Variation> best(Cost cost) {
        return best(cost, () -> false);
    }

    /**
     * The same, until somebody has enough: from then on there are no more, even if the next one is
     * still being looked for. Near the limits of a rule on different surfaces that can take a
     * while.
     *
     * @param stopped asked often, on the thread that asks for variations
     */
    public Stream<Variation> best(Cost cost, BooleanSupplier stopped) {
        return best(cost, stopped, BestSearch.PATIENCE);
    }

    /** The same, with costs that know the surfaces struck from so many beginnings on: for tests. */
    Stream<Variation> best(Cost cost, BooleanSupplier stopped, int patience) {
        if (total().signum() == 0) {
            return Stream.empty();
        }
        Family search = family;
        if (plan.limits.least() > 1 || plan.limits.most() < plan.surfaces.size()) {
            BitSet all = new BitSet();
            all.set(0, plan.surfaces.size());
            search =
                    new Family(
                            plan,
                            List.of(SurfaceSets.Weighted.of(all, BigInteger.ONE)),
                            family.narrow,
                            false);
        }
        BestSearch found = new BestSearch(search, cost, stopped, patience);
        return stream(found)
                .map(options -> new Variation(ranking.indexOf(options), sounds(options)));
    }

    private static <T> Stream<T> stream(Iterator<T> iterator) {
        return StreamSupport.stream(
                Spliterators.spliteratorUnknownSize(
                        iterator, Spliterator.ORDERED | Spliterator.NONNULL),
                false);
    }

    /**
     * The variations that differ in exactly one stroke, in the order of their indices.
     *
     * @throws IllegalArgumentException if the sounds are no variation
     */
    public List<Variation> neighbours(List<SoundName> sounds) {
        Optional<String> fault = fault(sounds);
        if (fault.isPresent()) {
            throw new IllegalArgumentException(
                    "these sounds are none of the variations: " + fault.get());
        }
        int[] options = optionsOf(sounds);
        List<int[]> found = new ArrayList<>();
        for (int i = 0; i < options.length; i++) {
            for (int o = 0; o < plan.surfaceOf[i].length; o++) {
                int[] changed = options.clone();
                changed[i] = o;
                if (o != options[i] && Check.fault(plan, changed).isEmpty()) {
                    found.add(changed);
                }
            }
        }
        found.sort(Arrays::compare);
        return found.stream()
                .map(changed -> new Variation(ranking.indexOf(changed), sounds(changed)))
                .toList();
    }

    /**
     * For each played stroke, by its index in the sticking, how many variations put it on each of
     * its sounds. The numbers of one stroke add up to the total.
     */
    public SortedMap<Integer, Map<SoundName, BigInteger>> waysPerStroke() {
        BigInteger[][] ways = Marginals.of(family);
        SortedMap<Integer, Map<SoundName, BigInteger>> all = new TreeMap<>();
        for (int i = 0; i < ways.length; i++) {
            Map<SoundName, BigInteger> bySound = new LinkedHashMap<>();
            for (int o = 0; o < ways[i].length; o++) {
                bySound.put(plan.played.get(i).sounds().get(o), ways[i][o]);
            }
            all.put(plan.played.get(i).index(), bySound);
        }
        return all;
    }

    /**
     * How far the limbs travel in a variation, and how fast that can go. With the loop rule, from
     * the end back to the start too.
     *
     * @param sounds one for each played stroke
     */
    public Travel travel(List<SoundName> sounds) {
        return Travels.of(plan, sounds);
    }

    /** The recipe with a variation's sounds on its strokes, ready to weave. */
    public Recipe recipe(Variation variation) {
        SortedMap<Integer, SoundName> strokes = new TreeMap<>();
        for (int i = 0; i < plan.played.size(); i++) {
            strokes.put(plan.played.get(i).index(), variation.sounds().get(i));
        }
        return recipe.with(recipe.voicing().withStrokes(strokes));
    }

    /**
     * The fewest rules that contradict each other, if there are no variations. What a letter
     * chooses from counts as a rule, {@link Rule.Allowed}: without it the letter could sound on all
     * its limb can strike.
     */
    public Optional<Contradiction> contradiction() {
        return total().signum() == 0
                ? Optional.of(Contradiction.find(recipe, choices, rules, model))
                : Optional.empty();
    }
}
