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

/** All plans for a target, by the number of their additions, always in the same order. */
final class Plans {
    /** The letters that have plans of their own. */
    private static final List<Letter> LETTERS = List.of(Letter.R, Letter.L, Letter.K, Letter.H);

    private final Heard heard;
    private final List<Addition.Layered> layers = new ArrayList<>();
    private final List<List<LetterPlan>> letterPlans = new ArrayList<>();
    private final Map<List<Addition.Layered>, Layering> layerings = new HashMap<>();

    Plans(Heard heard) {
        this.heard = heard;
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

    /** The plans of so many additions by which every stroke of a set can be produced. */
    List<Plan> covering(BitSet strokes, int additions) {
        List<Plan> found = new ArrayList<>();
        walk(
                additions,
                layering -> plan -> plan.additions().isEmpty() || isUsable(plan, layering),
                plan -> {
                    if (covers(plan, strokes)) {
                        found.add(plan);
                    }
                    return true;
                });
        return found;
    }

    /** Whether every stroke of a set can be produced by one plan of so many additions. */
    boolean canCover(BitSet strokes, int fewestAdditions, int mostAdditions) {
        for (int additions = fewestAdditions; additions <= mostAdditions; additions++) {
            boolean none =
                    walk(
                            additions,
                            layering ->
                                    plan -> plan.additions().isEmpty() || isUsable(plan, layering),
                            plan -> !covers(plan, strokes));
            if (!none) {
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
                layering ->
                        plan -> {
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
                                    ? !plan.bothHands()
                                    : contains(plan.both(), bothAt))) {
                        found.add(plan);
                    }
                    return true;
                });
        return found;
    }

    private static boolean isUsable(LetterPlan plan, Layering layering) {
        return plan.letter().isOneHand() || !layering.alone(plan).isEmpty();
    }

    private static boolean covers(Plan plan, BitSet strokes) {
        BitSet missing = (BitSet) strokes.clone();
        missing.andNot(plan.layering().silent());
        for (LetterPlan letter : plan.letters()) {
            missing.andNot(plan.layering().alone(letter));
        }
        if (!missing.isEmpty()) {
            missing.andNot(plan.both());
        }
        return missing.isEmpty();
    }

    private static boolean contains(BitSet all, BitSet part) {
        BitSet missing = (BitSet) part.clone();
        missing.andNot(all);
        return missing.isEmpty();
    }

    /** What letter plans a walk takes, told for each layering. */
    private interface Filter {
        Predicate<LetterPlan> on(Layering layering);
    }

    /** Shows all plans of so many additions until the visitor says false; false if it did. */
    private boolean walk(int additions, Filter filter, Predicate<Plan> visitor) {
        for (int layered = 0; layered <= additions; layered++) {
            for (List<Addition.Layered> some : layerSets(layered, 0)) {
                Layering layering = layerings.computeIfAbsent(some, s -> new Layering(heard, s));
                int left = additions - layered;
                List<List<LetterPlan>> taken =
                        letterPlans.stream()
                                .map(
                                        plans ->
                                                plans.stream()
                                                        .filter(p -> p.additions().size() <= left)
                                                        .filter(filter.on(layering))
                                                        .toList())
                                .toList();
                if (!walk(layering, taken, List.of(), left, visitor)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean walk(
            Layering layering,
            List<List<LetterPlan>> taken,
            List<LetterPlan> chosen,
            int left,
            Predicate<Plan> visitor) {
        if (chosen.size() == LETTERS.size()) {
            return left > 1 || visitor.test(new Plan(layering, chosen, left == 1));
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

    /** All sets of so many layers on different limbs and sounds. */
    private List<List<Addition.Layered>> layerSets(int size, int from) {
        if (size == 0) {
            return List.of(List.of());
        }
        List<List<Addition.Layered>> sets = new ArrayList<>();
        for (int i = from; i < layers.size(); i++) {
            Addition.Layered first = layers.get(i);
            for (List<Addition.Layered> rest : layerSets(size - 1, i + 1)) {
                if (rest.stream()
                        .noneMatch(
                                layer ->
                                        layer.limb() == first.limb()
                                                || layer.sound().equals(first.sound()))) {
                    List<Addition.Layered> set = new ArrayList<>(List.of(first));
                    set.addAll(rest);
                    sets.add(List.copyOf(set));
                }
            }
        }
        return sets;
    }
}
