package org.kitweft.ui.session;

import java.util.List;
import java.util.OptionalInt;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * What a new user finds: a single paradiddle between hi-hat and snare, the back beat accented and
 * the rest of the left hand soft, over a bass drum figure. It sounds like a groove at the first
 * press of a key and shows accents, ghost strokes and a layer.
 */
public final class OpeningGroove {
    private OpeningGroove() {}

    /** The session a new user starts with. */
    public static Session session() {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        Voicing voicing =
                Voicing.plain(kit)
                        .with(
                                Letter.R,
                                LetterVoicing.on(
                                        Limb.RIGHT_HAND, List.of(kit.find("hi-hat.closed"))))
                        .with(
                                Letter.L,
                                LetterVoicing.on(Limb.LEFT_HAND, List.of(kit.find("snare.head"))))
                        .withLayers(
                                List.of(
                                        new Layer(
                                                Limb.RIGHT_FOOT,
                                                kit.find("bass-drum"),
                                                4,
                                                Figure.parse(">x - - - - - - x - - >x - - - - -"))));
        Recipe recipe =
                new Recipe(
                        Sticking.parse("R (L) R R >L R (L) (L)"),
                        kit,
                        voicing,
                        Grid.SIXTEENTHS,
                        OptionalInt.empty());
        return Session.of(recipe, Tempo.DEFAULT);
    }
}
