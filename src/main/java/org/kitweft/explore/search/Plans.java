package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.kitweft.groove.Figure;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;

/**
 * All plans for a target, by the number of their additions, always in the same order. A unison is
 * an addition over and above the most that are allowed, for it sounds like a single stroke.
 */
final class Plans {
    /** The letters that have plans of their own. */
    private static final List<Letter> LETTERS = List.of(Letter.R, Letter.L, Letter.K, Letter.H);

    private final Heard heard;
    private final int mostBesideUnison;
    private final List<Addition.Layered> layers = new ArrayList<>();
    private final List<List<LetterPlan>> letterPlans = new ArrayList<>();

    /** For each number of layers all sets of them, made when first asked for. */
    private final List<List<LayerSet>> layerSets = new ArrayList<>();

    /** A set of layers and, once it has been needed, what it leaves to the sticking. */
    private static final class LayerSet {
        private final List<Addition.Layered> layers;
        private Optional<Layering> layering = Optional.empty();

        LayerSet(List<Addition.Layered> layers) {
            this.layers = layers;
        }

        Layering layering(Heard heard) {
            if (layering.isEmpty()) {
                layering = Optional.of(new Layering(heard, layers));
            }
            return layering.get();
        }
    }

    Plans(Heard heard, int mostBesideUnison) {
        this.heard = heard;
        this.mostBesideUnison = mostBesideUnison;
        for (Letter letter : LETTERS) {
            letterPlans.add(LetterPlan.all(letter, heard));
        }
        // Feet first: a layer is theirs more often than not.
        for (Limb limb :
                List.of(Limb.LEFT_FOOT, Limb.RIGHT_FOOT, Limb.RIGHT_HAND, Limb.LEFT_HAND)) {
            for (int sound = 0; sound < heard.sounds().size(); sound++) {
                Addition.Layered layer = new Addition.Layered(limb, heard.sounds().get(sound));
                if (heard.able(limb.ordinal(), sound)
                        && heard.canBeLayered(sound)
                        && LayerFigure.period(heard.target(), layer.sound()) <= Figure.MAX_STEPS) {
                    layers.add(layer);
                }
            }
        }
    }

    /** The most additions that a plan has, a unison counted. */
    int most() {
        return mostBesideUnison + 1;
    }

    /** The most additions that a plan has beside a unison. */
    int mostBesideUnison() {
        return mostBesideUnison;
    }

    /** The plans of so many additions by which every stroke of a set can be produced. */
    List<Plan> covering(BitSet strokes, int additions, Pace pace) {
        List<Plan> found = new ArrayList<>();
        walk(
                additions,
                Plans::isWorthTaking,
                plan -> {
                    if (covers(plan, strokes)) {
                        found.add(plan);
                    }
                    return true;
                },
                pace);
        return found;
    }

    /** Whether every stroke of a set can be produced by one plan of so many additions. */
    boolean canCover(BitSet strokes, int additions, Pace pace) {
        return !walk(
                additions,
                Plans::isWorthTaking,
                plan -> !mayCoverMore(plan) || !covers(plan, strokes),
                pace);
    }

    /** Whether every stroke of a set can be produced by any plan. */
    boolean canCover(BitSet strokes, Pace pace) {
        for (int additions = 0; additions <= most(); additions++) {
            if (canCover(strokes, additions, pace)) {
                return true;
            }
        }
        return false;
    }

    /** The plans of so many additions by which a given sticking can be produced. */
    List<Plan> forLetters(List<Optional<Letter>> letters, int additions) {
        Map<Letter, BitSet> needed = new HashMap<>();
        BitSet rests = new BitSet();
        for (int stroke = 0; stroke < letters.size(); stroke++) {
            int at = stroke;
            letters.get(stroke)
                    .ifPresentOrElse(
                            letter -> needed.computeIfAbsent(letter, none -> new BitSet()).set(at),
                            () -> rests.set(at));
        }
        boolean both = needed.containsKey(Letter.B);
        List<Plan> found = new ArrayList<>();
        walk(
                additions,
                (plan, layering) -> {
                    BitSet own = needed.get(plan.letter());
                    boolean occurs = own != null || (both && plan.letter().isOneHand());
                    return occurs
                            ? own == null || layering.produces(plan, own)
                            : plan.additions().isEmpty();
                },
                plan -> {
                    BitSet bothAt = needed.get(Letter.B);
                    if (contains(plan.layering().silent(), rests)
                            && (bothAt == null
                                    ? plan.both() == Plan.Both.TWO_SOUNDS
                                    : contains(plan.strokesOf(Letter.B), bothAt))) {
                        found.add(plan);
                    }
                    return true;
                },
                Pace.UNWATCHED);
        return found;
    }

    private static boolean isWorthTaking(LetterPlan plan, Layering layering) {
        return plan.additions().isEmpty()
                || plan.letter().isOneHand()
                || !layering.alone(plan).isEmpty();
    }

    /** How many sets of layers a search through all plans looks at. */
    int layerSetsInAll() {
        int sets = 0;
        for (int layered = 0; layered <= mostBesideUnison; layered++) {
            sets += layerSets(layered).size() * (most() - layered + 1);
        }
        return sets;
    }

    /** A unison produces what one of its hands does, unless both strike something else with it. */
    private static boolean mayCoverMore(Plan plan) {
        return plan.both() != Plan.Both.UNISON
                || (plan.of(Letter.R).doubling().isPresent()
                        && plan.of(Letter.L).doubling().isPresent());
    }

    private static boolean covers(Plan plan, BitSet strokes) {
        BitSet missing = (BitSet) strokes.clone();
        missing.andNot(plan.layering().silent());
        for (LetterPlan letter : plan.letters()) {
            missing.andNot(plan.layering().alone(letter));
        }
        if (!missing.isEmpty()) {
            missing.andNot(plan.strokesOf(Letter.B));
        }
        return missing.isEmpty();
    }

    private static boolean contains(BitSet all, BitSet part) {
        BitSet missing = (BitSet) part.clone();
        missing.andNot(all);
        return missing.isEmpty();
    }

    /** What letter plans a walk takes. */
    private interface Filter {
        boolean takes(LetterPlan plan, Layering layering);
    }

    /** Shows all plans of so many additions until the visitor says false; false if it did. */
    private boolean walk(int additions, Filter filter, Predicate<Plan> visitor, Pace pace) {
        for (int layered = 0; layered <= Math.min(additions, mostBesideUnison); layered++) {
            for (LayerSet set : layerSets(layered)) {
                pace.step();
                Layering layering = set.layering(heard);
                int left = additions - layered;
                List<List<LetterPlan>> taken = new ArrayList<>();
                for (List<LetterPlan> plans : letterPlans) {
                    taken.add(taken(plans, left, filter, layering));
                }
                if (!walk(layering, taken, List.of(), left, visitor)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<LetterPlan> taken(
            List<LetterPlan> plans, int most, Filter filter, Layering layering) {
        List<LetterPlan> taken = new ArrayList<>();
        for (LetterPlan plan : plans) {
            if (plan.additions().size() <= most && filter.takes(plan, layering)) {
                taken.add(plan);
            }
        }
        return taken;
    }

    private boolean walk(
            Layering layering,
            List<List<LetterPlan>> taken,
            List<LetterPlan> chosen,
            int left,
            Predicate<Plan> visitor) {
        if (chosen.size() == LETTERS.size()) {
            return walk(layering, chosen, left, visitor);
        }
        for (LetterPlan next : taken.get(chosen.size())) {
            int cost = next.additions().size();
            if (cost <= left) {
                List<LetterPlan> more = new ArrayList<>(chosen);
                more.add(next);
                if (!walk(layering, taken, List.copyOf(more), left - cost, visitor)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The plans that differ in what B is. */
    private boolean walk(
            Layering layering, List<LetterPlan> letters, int left, Predicate<Plan> visitor) {
        int others = layering.layers().size();
        for (LetterPlan letter : letters) {
            others += letter.additions().size();
        }
        for (Plan.Both both : Plan.Both.values()) {
            boolean allowed =
                    both == Plan.Both.UNISON
                            || others + both.additions().size() <= mostBesideUnison;
            if (both.additions().size() == left
                    && allowed
                    && !visitor.test(new Plan(layering, letters, both))) {
                return false;
            }
        }
        return true;
    }

    /** All sets of so many layers on different limbs and sounds. */
    private List<LayerSet> layerSets(int size) {
        while (layerSets.size() <= size) {
            List<LayerSet> sets = new ArrayList<>();
            for (List<Addition.Layered> layers : layerSets(layerSets.size(), 0)) {
                sets.add(new LayerSet(layers));
            }
            layerSets.add(sets);
        }
        return layerSets.get(size);
    }

    private List<List<Addition.Layered>> layerSets(int size, int from) {
        if (size == 0) {
            return List.of(List.of());
        }
        List<List<Addition.Layered>> sets = new ArrayList<>();
        for (int i = from; i < layers.size(); i++) {
            Addition.Layered first = layers.get(i);
            for (List<Addition.Layered> rest : layerSets(size - 1, i + 1)) {
                if (isApart(first, rest)) {
                    List<Addition.Layered> set = new ArrayList<>(List.of(first));
                    set.addAll(rest);
                    sets.add(List.copyOf(set));
                }
            }
        }
        return sets;
    }

    private static boolean isApart(Addition.Layered first, List<Addition.Layered> rest) {
        for (Addition.Layered layer : rest) {
            if (layer.limb() == first.limb() || layer.sound().equals(first.sound())) {
                return false;
            }
        }
        return true;
    }
}
