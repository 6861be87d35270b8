package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;

/**
 * Who plays a letter and what strikes with it; on which sounds is left open.
 *
 * @param letter R, L, K or H
 * @param limb who plays it
 * @param doubling what else is struck with it
 * @param tacet whether it is silent
 * @param additions what of this goes beyond the letter's own limb
 */
record LetterPlan(
        Letter letter,
        Limb limb,
        Optional<Addition.Doubled> doubling,
        boolean tacet,
        List<Addition> additions) {

    /** All plans of a letter for a target, the plainest first. */
    static List<LetterPlan> all(Letter letter, Heard heard) {
        Kit kit = heard.target().kit();
        Limb own = Voicing.limbOf(letter, kit);
        List<LetterPlan> all = new ArrayList<>();
        all.add(new LetterPlan(letter, own, Optional.empty(), false, List.of()));
        all.add(
                new LetterPlan(
                        letter, own, Optional.empty(), true, List.of(new Addition.Tacet(letter))));
        for (Limb limb : Limb.values()) {
            List<Addition> handed =
                    limb == own ? List.of() : List.of(new Addition.HandedOver(letter, limb));
            if (limb != own) {
                all.add(new LetterPlan(letter, limb, Optional.empty(), false, handed));
            }
            for (Addition.Doubled doubling : doublings(letter, limb, heard)) {
                List<Addition> additions = new ArrayList<>(handed);
                additions.add(doubling);
                all.add(
                        new LetterPlan(
                                letter,
                                limb,
                                Optional.of(doubling),
                                false,
                                List.copyOf(additions)));
            }
        }
        all.sort(Comparator.comparingInt(plan -> plan.additions().size()));
        return List.copyOf(all);
    }

    private static List<Addition.Doubled> doublings(Letter letter, Limb limb, Heard heard) {
        List<Addition.Doubled> all = new ArrayList<>();
        for (boolean accentsOnly : new boolean[] {false, true}) {
            for (Limb other : Limb.values()) {
                for (int sound = 0; sound < heard.sounds().size(); sound++) {
                    if (other != limb && heard.able(other.ordinal(), sound)) {
                        all.add(
                                new Addition.Doubled(
                                        letter, other, heard.sounds().get(sound), accentsOnly));
                    }
                }
            }
        }
        return all;
    }
}
