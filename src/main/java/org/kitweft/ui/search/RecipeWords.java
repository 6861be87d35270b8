package org.kitweft.ui.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/** A voicing in one line: {@code R: ride; L: snare, accents high-tom; stroke 4: crash}. */
public final class RecipeWords {
    private RecipeWords() {}

    /** What the letters of a recipe's sticking strike, single strokes elsewhere, layers. */
    public static String voicing(Recipe recipe) {
        Kit kit = recipe.kit();
        List<String> parts = new ArrayList<>();
        for (Letter letter : recipe.sticking().letters()) {
            recipe.voicing().letter(letter).ifPresent(v -> parts.add(of(letter, v, kit)));
        }
        recipe.voicing()
                .strokes()
                .forEach(
                        (index, sound) ->
                                parts.add("stroke %d: %s".formatted(index + 1, name(sound, kit))));
        for (Layer layer : recipe.voicing().layers()) {
            parts.add("layer of the %s: %s".formatted(layer.limb().words(), layer.text()));
        }
        return String.join("; ", parts);
    }

    private static String of(Letter letter, LetterVoicing voiced, Kit kit) {
        if (voiced.tacet()) {
            return letter + ": tacet";
        }
        StringBuilder words = new StringBuilder().append(letter);
        Optional<Limb> other =
                Optional.of(voiced.limb()).filter(limb -> limb != Voicing.limbOf(letter, kit));
        other.ifPresent(limb -> words.append(" by the ").append(limb.words()));
        words.append(": ").append(names(voiced.path(), kit));
        if (!voiced.accents().isEmpty()) {
            words.append(", accents ").append(names(voiced.accents(), kit));
        }
        if (!voiced.ghosts().isEmpty()) {
            words.append(", ghosts ").append(names(voiced.ghosts(), kit));
        }
        for (Doubling doubling : voiced.doublings()) {
            words.append(doubling.accentsOnly() ? ", accents with " : " with ")
                    .append(name(doubling.sound(), kit));
        }
        return words.toString();
    }

    private static String names(List<SoundName> sounds, Kit kit) {
        return sounds.stream().map(sound -> name(sound, kit)).collect(Collectors.joining(" "));
    }

    private static String name(SoundName sound, Kit kit) {
        return kit.has(sound) && kit.find(sound.surface()).equals(sound)
                ? sound.surface()
                : sound.text();
    }
}
