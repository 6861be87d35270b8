package org.kitweft.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Target;
import org.kitweft.ui.session.VoicingEdits;

/**
 * Who stands where on the kit: a token for each place a letter takes, and the limbs beside them.
 * Immutable; knows nothing of pixels.
 *
 * @param recipe what it was made of
 * @param tokens in the order of letters
 * @param companions doublings and layers
 */
record KitModel(Recipe recipe, List<Token> tokens, List<Companion> companions) {
    KitModel {
        tokens = List.copyOf(tokens);
        companions = List.copyOf(companions);
    }

    static KitModel of(Recipe recipe) {
        List<Token> tokens = new ArrayList<>();
        List<Companion> companions = new ArrayList<>();
        Set<Letter> used = recipe.sticking().letters();
        for (Letter letter : Letter.values()) {
            Optional<LetterVoicing> voiced = recipe.voicing().letter(letter);
            if (!used.contains(letter)) {
                if (letter != Letter.B) {
                    tokens.add(aside(recipe, letter, "not in the sticking"));
                }
            } else if (voiced.isEmpty()) {
                tokens.add(
                        aside(recipe, letter, letter == Letter.B ? "as R and L" : "nothing yet"));
            } else if (voiced.get().tacet()) {
                tokens.add(aside(recipe, letter, "tacet"));
            } else {
                addPlaced(recipe.kit(), letter, voiced.get(), tokens);
                for (Doubling doubling : voiced.get().doublings()) {
                    companions.add(
                            new Companion(
                                    doubling.limb(),
                                    doubling.sound(),
                                    (doubling.accentsOnly() ? "+>" : "+") + letter));
                }
            }
        }
        for (Layer layer : recipe.voicing().layers()) {
            companions.add(new Companion(layer.limb(), layer.sound(), layer.limb().shortName()));
        }
        companions.removeIf(companion -> !recipe.kit().has(companion.sound()));
        return new KitModel(recipe, tokens, companions);
    }

    private static void addPlaced(
            Kit kit, Letter letter, LetterVoicing voiced, List<Token> tokens) {
        for (Target target : Target.values()) {
            List<SoundName> sounds = target.sounds(voiced);
            for (int turn = 0; turn < sounds.size(); turn++) {
                Optional<SoundName> sound = Optional.of(sounds.get(turn)).filter(kit::has);
                tokens.add(
                        new Token(
                                letter,
                                target,
                                turn,
                                sounds.size(),
                                voiced.limb(),
                                sound,
                                sound.isPresent() ? "" : "not on this kit"));
            }
        }
    }

    private static Token aside(Recipe recipe, Letter letter, String why) {
        return new Token(
                letter, Target.ALL, 0, 1, VoicingEdits.limb(recipe, letter), Optional.empty(), why);
    }

    Kit kit() {
        return recipe.kit();
    }

    /** The tokens on a surface. */
    List<Token> on(Surface surface) {
        return tokens.stream()
                .filter(t -> t.sound().filter(s -> s.surface().equals(surface.id())).isPresent())
                .toList();
    }

    /** The doublings and layers on a surface. */
    List<Companion> beside(Surface surface) {
        return companions.stream().filter(c -> c.sound().surface().equals(surface.id())).toList();
    }

    /** The tokens that lie aside. */
    List<Token> aside() {
        return tokens.stream().filter(token -> token.sound().isEmpty()).toList();
    }

    /** The surface where a letter stands, its first place counted. */
    Optional<Surface> surfaceOf(Letter letter, Target target) {
        return tokens.stream()
                .filter(t -> t.letter() == letter && t.target() == target)
                .flatMap(t -> t.sound().stream())
                .findFirst()
                .flatMap(sound -> kit().surface(sound.surface()));
    }
}
