package org.kitweft.groove;

import java.util.List;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * What is heard on the first start: the single paradiddle as a time groove. The right hand keeps to
 * the hi-hat and the left to the snare, so that the paradiddle's own accents fall on the beats: the
 * right hand's get the bass drum (1 and 3), the left hand's are the back beat (2 and 4).
 */
public final class OpeningGroove {
    private OpeningGroove() {}

    /** One bar of sixteenths on the five-piece kit. */
    public static Recipe recipe() {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        SoundName hiHat = kit.find("hi-hat");
        SoundName bassDrum = kit.find("bass-drum");
        Voicing plain = Voicing.plain(kit);
        Voicing voicing =
                plain.with(
                        Letter.R,
                        LetterVoicing.on(Limb.RIGHT_HAND, List.of(hiHat))
                                .withDoublings(
                                        List.of(new Doubling(Limb.RIGHT_FOOT, bassDrum, true))));
        return Recipe.plain(Sticking.parse(">R(L)RR >LR(L)(L)"), kit).with(voicing);
    }
}
