package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;
import picocli.CommandLine.Option;

/** What the strokes of each letter may choose from. */
final class ChoiceOptions {
    @Option(
            names = "--choose",
            paramLabel = "LETTER=SOUND[,SOUND...]|LETTER=all",
            description =
                    "The sounds that strokes of a letter may choose from, in the order in which variations follow each other; LETTER=all: every sound that its limb can strike. Without it, each letter of the sticking has one sound of every surface in its reach, the first, and what its strokes are pinned to; with it, only the letters named have choices.")
    private List<String> choose = new ArrayList<>();

    /** Those named, or the usual ones under the rules. */
    Choices choices(Recipe recipe, List<Rule> rules) {
        Kit kit = recipe.kit();
        Voicing voicing = recipe.voicing();
        if (choose.isEmpty()) {
            return Choices.usual(recipe.sticking(), kit, voicing, rules);
        }
        Choices choices = Choices.NONE;
        for (String one : choose) {
            Optional<Letter> ofAll = letterOfAll(one);
            choices =
                    ofAll.isPresent()
                            ? choices.with(
                                    ofAll.get(), Choices.everything(ofAll.get(), kit, voicing))
                            : choices.with(one, kit);
        }
        for (Letter letter : choices.letters()) {
            for (SoundName sound : choices.of(letter)) {
                Limb limb =
                        voicing.letter(letter)
                                .map(LetterVoicing::limb)
                                .orElse(Voicing.limbOf(letter, kit));
                Reach.check("--choose " + letter, limb, sound, kit, "");
                if (letter == Letter.B) {
                    Reach.check("--choose " + letter, limb.opposite(), sound, kit, "");
                }
            }
        }
        return choices;
    }

    /** The letter that is to have every sound, if this says so. */
    private static Optional<Letter> letterOfAll(String text) {
        String[] parts = text.strip().split("\\s*=\\s*", -1);
        return parts.length == 2 && parts[0].length() == 1 && parts[1].equals("all")
                ? Letter.of(parts[0].charAt(0))
                : Optional.empty();
    }

    /** A line for each letter with the sounds it chooses from, and how to have others. */
    String words(Recipe recipe, Choices choices) {
        StringBuilder text = new StringBuilder();
        boolean more = false;
        for (Letter letter : choices.letters()) {
            List<SoundName> sounds = choices.of(letter);
            text.append(
                    "%s chooses from %d: %s\n"
                            .formatted(
                                    letter,
                                    sounds.size(),
                                    sounds.stream()
                                            .map(SoundName::text)
                                            .collect(Collectors.joining(", "))));
            more |=
                    sounds.size()
                            < Choices.everything(letter, recipe.kit(), recipe.voicing()).size();
        }
        if (choose.isEmpty() && more) {
            text.append("These are one sound a surface; --choose names others, or all.\n");
        }
        return text.toString();
    }

    /** The recipe with the strokes of letters that are tacet written as the rests they become. */
    static Recipe withoutTacet(Recipe recipe) {
        List<Stroke> strokes =
                recipe.sticking().strokes().stream()
                        .map(stroke -> isTacet(stroke, recipe.voicing()) ? Stroke.REST : stroke)
                        .toList();
        return recipe.with(new Sticking(strokes));
    }

    private static boolean isTacet(Stroke stroke, Voicing voicing) {
        return stroke.struck()
                .flatMap(struck -> voicing.letter(struck.letter()))
                .map(LetterVoicing::tacet)
                .orElse(false);
    }
}
