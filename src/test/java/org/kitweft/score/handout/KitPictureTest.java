package org.kitweft.score.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.groove.Groove;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Ink;
import org.kitweft.score.engrave.PlacedSign;
import org.kitweft.score.engrave.SignList;

class KitPictureTest {
    private final Fonts fonts = Fonts.load();

    private List<PlacedSign> words(Groove groove) {
        SignList signs = new SignList(fonts);
        new KitPicture(groove).place(signs, 0, 0, 178, 114);
        return signs.signs().stream().filter(sign -> sign.ink() instanceof Ink.OfText).toList();
    }

    private static String text(PlacedSign sign) {
        return ((Ink.OfText) sign.ink()).text();
    }

    @ParameterizedTest
    @ValueSource(strings = {"five-piece", "extended", "hand-drums", "timpani"})
    void noWordLiesOnAnother(String kit) {
        Groove groove = Recipe.plain(Sticking.parse("RLKB RLRL"), BuiltInKits.load(kit)).weave();
        assertApart(words(groove));
    }

    /** A right hand that goes round the whole kit, beside a left one that stays. */
    @Test
    void noWordLiesOnAnotherWhereEverythingIsStruck() {
        Kit kit = BuiltInKits.load("five-piece");
        List<SoundName> round = new ArrayList<>();
        for (Surface surface : kit.surfaces()) {
            kit.soundsFor(Limb.RIGHT_HAND).stream()
                    .filter(sound -> sound.surface().equals(surface.id()))
                    .findFirst()
                    .ifPresent(round::add);
        }
        Recipe plain = Recipe.plain(Sticking.parse("[RL]*8 KHKH"), kit);
        Recipe recipe =
                plain.with(
                        plain.voicing().with(Letter.R, LetterVoicing.on(Limb.RIGHT_HAND, round)));
        List<PlacedSign> words = words(recipe.weave());
        assertApart(words);
        assertThat(words.stream().map(KitPictureTest::text))
                .contains("Snare", "High tom", "Mid tom", "Floor tom", "Bass drum")
                .contains("Ride", "Crash", "Hi-hat", "RH", "LH", "RF", "LF");
    }

    private static void assertApart(List<PlacedSign> words) {
        assertThat(words).hasSizeGreaterThan(3);
        for (int i = 0; i < words.size(); i++) {
            for (int j = 0; j < i; j++) {
                Rectangle2D both = words.get(i).bounds().createIntersection(words.get(j).bounds());
                assertThat(both.getWidth() > 0.3 && both.getHeight() > 0.3)
                        .as("%s on %s", text(words.get(i)), text(words.get(j)))
                        .isFalse();
            }
        }
    }
}
