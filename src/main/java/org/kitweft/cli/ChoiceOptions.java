package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.explore.Choices;
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
            paramLabel = "LETTER=SOUND[,SOUND...]",
            description =
                    "The sounds that strokes of a letter may choose from, in the order in which variations follow each other. Without it, each letter of the sticking may strike all that its limb can; with it, only the letters named have choices.")
    private List<String> choose = new ArrayList<>();

    Choices choices(Recipe recipe) {
        Kit kit = recipe.kit();
        Voicing voicing = recipe.voicing();
        if (choose.isEmpty()) {
            return Choices.everything(recipe.sticking(), kit, voicing);
        }
        Choices choices = Choices.NONE;
        for (String one : choose) {
            choices = choices.with(one, kit);
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
