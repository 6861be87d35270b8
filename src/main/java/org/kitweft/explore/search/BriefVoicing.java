package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;

/** Writes a recipe that chance has made as briefly as a person would: it weaves to the same. */
final class BriefVoicing {
    private BriefVoicing() {}

    /**
     * Each path only until it comes round, and nothing for accents or ghosts that a letter does not
     * have; those of B may be those of R and L.
     */
    static Recipe of(Recipe recipe) {
        Voicing brief = recipe.voicing();
        for (Letter letter : Letter.values()) {
            LetterVoicing voiced = brief.letters().get(letter);
            if (voiced != null) {
                boolean accented = occurs(recipe, letter, Dynamic.ACCENT);
                List<Doubling> doublings = new ArrayList<>(voiced.doublings());
                doublings.removeIf(doubling -> doubling.accentsOnly() && !accented);
                brief =
                        brief.with(
                                letter,
                                new LetterVoicing(
                                        voiced.limb(),
                                        once(voiced.path()),
                                        accented ? once(voiced.accents()) : List.of(),
                                        occurs(recipe, letter, Dynamic.GHOST)
                                                ? once(voiced.ghosts())
                                                : List.of(),
                                        doublings,
                                        voiced.tacet()));
            }
        }
        return recipe.with(brief);
    }

    private static boolean occurs(Recipe recipe, Letter letter, Dynamic dynamic) {
        return recipe.sticking().struck().stream()
                .anyMatch(
                        struck ->
                                struck.dynamic() == dynamic
                                        && (struck.letter() == letter
                                                || (struck.letter() == Letter.B
                                                        && letter.isOneHand())));
    }

    private static List<SoundName> once(List<SoundName> path) {
        for (int length = 1; length < path.size(); length++) {
            if (path.size() % length == 0
                    && path.subList(length, path.size())
                            .equals(path.subList(0, path.size() - length))) {
                return path.subList(0, length);
            }
        }
        return path;
    }
}
