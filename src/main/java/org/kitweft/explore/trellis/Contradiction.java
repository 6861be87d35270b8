package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.combinatorics.Combinations;
import org.kitweft.explore.Choices;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/**
 * Rules that no variation can keep together: no smaller set of the rules given is contradictory.
 *
 * @param rules at least one
 */
public record Contradiction(List<Rule> rules) {
    /** How many sets of one size are tried before the smallest known so far is taken. */
    private static final long MOST_SETS = 20_000;

    public Contradiction {
        rules = List.copyOf(rules);
        if (rules.isEmpty()) {
            throw new IllegalArgumentException("a contradiction has at least one rule");
        }
    }

    /** One clear line. */
    public String words() {
        String names = rules.stream().map(Rule::words).collect(Collectors.joining("; "));
        return rules.size() == 1
                ? "no variation keeps this rule: " + names
                : "no variation keeps all rules, these contradict each other: " + names;
    }

    /**
     * Finds the smallest set: sizes are tried from one on, up to that of one found by leaving out.
     * Of several, the one with the rules named earlier, choices last.
     */
    static Contradiction find(Recipe recipe, Choices choices, List<Rule> rules, ReachModel model) {
        Set<Rule> all = new LinkedHashSet<>(rules);
        Set<Letter> letters = recipe.sticking().letters();
        choices.sounds()
                .forEach(
                        (letter, sounds) -> {
                            if (letters.contains(letter)) {
                                all.add(new Rule.Allowed(letter, sounds));
                            }
                        });
        Trial trial = new Trial(recipe, choices, List.copyOf(all), model);
        List<Rule> known = new ArrayList<>(trial.rules);
        for (Rule rule : trial.rules) {
            List<Rule> without = new ArrayList<>(known);
            without.remove(rule);
            known = trial.canBeKept(without) ? known : without;
        }
        for (int size = 1; size <= known.size(); size++) {
            long tried = 0;
            for (int[] chosen : Combinations.of(trial.rules.size(), size)) {
                List<Rule> some = new ArrayList<>();
                for (int index : chosen) {
                    some.add(trial.rules.get(index));
                }
                if (!trial.canBeKept(some)) {
                    return new Contradiction(some);
                }
                if (++tried > MOST_SETS) {
                    break;
                }
            }
        }
        return new Contradiction(known);
    }

    /** Tries sets of rules; letters that no rule of the set restricts may sound anywhere. */
    private record Trial(Recipe recipe, Choices choices, List<Rule> rules, ReachModel model) {
        boolean canBeKept(List<Rule> some) {
            Map<Letter, List<SoundName>> sounds = new EnumMap<>(Letter.class);
            Choices everything =
                    Choices.everything(recipe.sticking(), recipe.kit(), recipe.voicing());
            choices.sounds()
                    .forEach(
                            (letter, own) -> {
                                Set<SoundName> all = new LinkedHashSet<>(own);
                                boolean restricted =
                                        some.stream()
                                                .anyMatch(
                                                        r ->
                                                                r instanceof Rule.Allowed a
                                                                        && a.letter() == letter);
                                if (restricted) {
                                    some.forEach(r -> addAllowed(r, letter, all));
                                } else {
                                    all.addAll(everything.of(letter));
                                    some.forEach(r -> addPinned(r, letter, all));
                                }
                                sounds.put(letter, List.copyOf(all));
                            });
            return Possibilities.of(recipe, new Choices(sounds), some, model).total().signum() != 0;
        }

        private void addPinned(Rule rule, Letter letter, Set<SoundName> all) {
            if (rule instanceof Rule.Pin pin
                    && recipe.sticking()
                            .strokes()
                            .get(pin.index())
                            .struck()
                            .filter(struck -> struck.letter() == letter)
                            .isPresent()) {
                all.add(pin.sound());
            }
        }

        private static void addAllowed(Rule rule, Letter letter, Set<SoundName> all) {
            if (rule instanceof Rule.Allowed allowed && allowed.letter() == letter) {
                all.addAll(allowed.sounds());
            }
        }
    }
}
